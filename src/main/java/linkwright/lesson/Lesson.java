package linkwright.lesson;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One lesson: which item comes next, by what was answered in it so far.
 *
 * @param id by what her book knows it
 * @param bank what can be asked, in the order in which it is taught
 * @param learnt what she has shown
 * @param today the day
 * @param asked the items answered in this lesson, in their order, with how
 */
public record Lesson(
    String id, List<Item> bank, Recall learnt, LocalDate today, List<LessonAnswer> asked) {
  /** So many items are taken up in a lesson; those missed come on top. */
  public static final int LENGTH = 12;

  /** So many others come between a miss and its return, as long as there are so many. */
  static final int BETWEEN = 3;

  /** After so many misses nothing new is taken up: asking on teaches no more today. */
  public static final int ENOUGH = 12;

  /** So often missed in a lesson an item rests till the next day; a caution never does. */
  static final int TRIES = 3;

  public Lesson {
    bank = List.copyOf(bank);
    asked = List.copyOf(asked);
  }

  /** An answer of this lesson. */
  public record LessonAnswer(String item, boolean right) {}

  /** What comes next; empty when the lesson is over. */
  public Optional<Item> next() {
    Map<String, Integer> missed = missedAt();
    missed.keySet().removeIf(this::rests);
    Optional<Item> card = first(missed, item -> back(item) == Back.AT_ONCE);
    if (card.isPresent()) {
      return card;
    }
    Optional<Item> returns = first(missed, item -> asked.size() - missed.get(item.id()) > BETWEEN);
    if (returns.isPresent()) {
      return returns;
    }
    Optional<Item> more = taken() < LENGTH && !isEnough() ? fresh() : Optional.empty();
    return more.or(() -> missed.isEmpty() ? Optional.empty() : between())
        .or(() -> first(missed, any -> true));
  }

  /** One that was right, asked once more so that what was missed does not come back too soon. */
  private Optional<Item> between() {
    List<String> all = asked.stream().map(LessonAnswer::item).toList();
    return all.stream()
        .limit(Math.max(0, all.size() - BETWEEN))
        .filter(id -> Collections.frequency(all, id) == 1)
        .filter(id -> missesOf(id) == 0)
        .flatMap(id -> item(id).stream())
        .findFirst();
  }

  /** Whether one that was right here may be asked between a miss and its return. */
  private boolean mayComeBetween(String id) {
    boolean goesOn = !missedAt().isEmpty() || (taken() < LENGTH && !isEnough());
    long times = asked.stream().filter(given -> given.item().equals(id)).count();
    return goesOn && times == 1;
  }

  private int missesOf(String id) {
    return (int) asked.stream().filter(given -> given.item().equals(id) && !given.right()).count();
  }

  /** Whether it was missed so often here that it rests till the next day. */
  private boolean rests(String id) {
    return missesOf(id) >= TRIES && item(id).filter(Lesson::isOfCaution).isEmpty();
  }

  /** When an item that was just missed comes back. */
  public enum Back {
    AT_ONCE,
    LATER,
    ANOTHER_DAY,
    PERHAPS
  }

  /**
   * When that one, just answered, comes back here: a caution that was missed before anything else,
   * till it is right; what was right perhaps, to part a miss from its return.
   */
  public Back back(Item item) {
    if (!missedAt().containsKey(item.id())) {
      return mayComeBetween(item.id()) ? Back.PERHAPS : Back.ANOTHER_DAY;
    }
    if (isOfCaution(item)) {
      return Back.AT_ONCE;
    }
    return rests(item.id()) ? Back.ANOTHER_DAY : Back.LATER;
  }

  private static boolean isOfCaution(Item item) {
    return !item.caution().isEmpty();
  }

  /** Whether so much was missed here that nothing new is taken up today. */
  public boolean isEnough() {
    return misses() >= ENOUGH;
  }

  /** How often an answer was wrong here. */
  public int misses() {
    return (int) asked.stream().filter(given -> !given.right()).count();
  }

  /** What was missed here and was not right since, in the order of the misses. */
  public List<Item> open() {
    return missedAt().keySet().stream().flatMap(id -> item(id).stream()).toList();
  }

  /** Items whose last answer here was wrong → after how many answers that was. */
  private Map<String, Integer> missedAt() {
    Map<String, Integer> missed = new LinkedHashMap<>();
    for (int i = 0; i < asked.size(); i++) {
      LessonAnswer given = asked.get(i);
      missed.remove(given.item());
      if (!given.right()) {
        missed.put(given.item(), i);
      }
    }
    return missed;
  }

  private Optional<Item> first(
      Map<String, Integer> missed, java.util.function.Predicate<Item> which) {
    return missed.keySet().stream().flatMap(id -> item(id).stream()).filter(which).findFirst();
  }

  private Optional<Item> item(String id) {
    return bank.stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /** How many items were taken up here. */
  public int taken() {
    return (int) asked.stream().map(LessonAnswer::item).distinct().count();
  }

  /** What is due before what is new; of what is due, what was missed before the rest. */
  private Optional<Item> fresh() {
    List<Item> due = new ArrayList<>(due().stream().filter(item -> !isTaken(item)).toList());
    return due.stream().findFirst().or(this::mixed);
  }

  /**
   * What is new: of the kind that was asked least in this lesson, at a step that was not asked
   * about if there is one, and in the order in which it is taught. The sequence is first; how the
   * other kinds follow, the lesson's own name decides.
   */
  private Optional<Item> mixed() {
    List<Topic> kinds =
        new ArrayList<>(new Chance(id.hashCode()).shuffled(List.of(Topic.values())));
    kinds.remove(Topic.NEXT);
    kinds.add(0, Topic.NEXT);
    List<Item> taken = bank.stream().filter(this::isTaken).toList();
    return bank.stream()
        .filter(item -> !isTaken(item) && learnt.answers(item.id()).isEmpty())
        .min(
            Comparator.comparingLong(
                    (Item item) -> taken.stream().filter(t -> t.topic() == item.topic()).count())
                .thenComparingInt(item -> kinds.indexOf(item.topic()))
                .thenComparing(
                    item ->
                        !item.step().isEmpty()
                            && taken.stream().anyMatch(t -> t.step().equals(item.step()))));
  }

  private boolean isTaken(Item item) {
    return asked.stream().anyMatch(given -> given.item().equals(item.id()));
  }

  /**
   * What is due today: what was missed when it was asked last, then what was missed before, then
   * what is due longest.
   */
  public List<Item> due() {
    return bank.stream()
        .filter(item -> learnt.due(item.id()).filter(day -> !day.isAfter(today)).isPresent())
        .sorted(
            Comparator.comparing((Item item) -> !learnt.isMissedLast(item.id()))
                .thenComparing(item -> !learnt.missed(item.id()))
                .thenComparing(item -> learnt.due(item.id()).orElse(today)))
        .toList();
  }

  /** When something is due next after today; empty if nothing waits. */
  public Optional<LocalDate> nextDue() {
    return bank.stream()
        .flatMap(item -> learnt.due(item.id()).stream())
        .filter(day -> day.isAfter(today))
        .min(Comparator.naturalOrder());
  }
}
