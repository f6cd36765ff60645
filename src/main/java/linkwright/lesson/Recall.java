package linkwright.lesson;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a student has shown of each item, from what was asked and answered.
 *
 * @param items item → her answers to it, the first she gave before the others
 * @param gapDays days between one asking and the next
 */
public record Recall(Map<String, List<Answer>> items, int gapDays) {
  /** So many days lie between one asking and the next, always as many. */
  public static final int GAP_DAYS = 7;

  /** Right on so many days, and never wrong since, is known. */
  public static final int DAYS_RIGHT = 3;

  public Recall {
    Map<String, List<Answer>> ordered = new LinkedHashMap<>();
    items.forEach((item, answers) -> ordered.put(item, List.copyOf(answers)));
    items = Collections.unmodifiableMap(ordered);
  }

  /**
   * One answer.
   *
   * @param day the day at the bench
   * @param right whether it was right
   */
  public record Answer(LocalDate day, boolean right) {}

  /** Her answers to an item, in their order. */
  public List<Answer> answers(String item) {
    return items.getOrDefault(item, List.of());
  }

  /** Whether it was ever answered wrong. */
  public boolean missed(String item) {
    return answers(item).stream().anyMatch(answer -> !answer.right());
  }

  /** Whether it is known: right on three days since it was last wrong, a gap between each. */
  public boolean known(String item) {
    return daysRight(item) >= DAYS_RIGHT;
  }

  /** On how many days it was right since it was last wrong; a day within the gap is none. */
  public int daysRight(String item) {
    return stand(item).right();
  }

  /**
   * When it is to be asked again; empty for one that was never asked, or is known. What was missed
   * is asked on the next day already: whether it was kept overnight; that answer is no day of the
   * three unless it is wrong again.
   */
  public Optional<LocalDate> due(String item) {
    Stand stand = stand(item);
    Optional<LocalDate> missed = missedLast(item);
    if (missed.isPresent()) {
      return missed.map(day -> day.plusDays(1));
    }
    return stand
        .last()
        .filter(last -> stand.right() < DAYS_RIGHT)
        .map(last -> last.plusDays(gapDays));
  }

  /** Whether it was wrong once on the day on which it was asked last. */
  public boolean isMissedLast(String item) {
    return missedLast(item).isPresent();
  }

  /** The day on which it was asked last, if it was wrong once on that day. */
  private Optional<LocalDate> missedLast(String item) {
    List<Answer> all = answers(item);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    LocalDate last = all.get(all.size() - 1).day();
    return all.stream().anyMatch(each -> each.day().equals(last) && !each.right())
        ? Optional.of(last)
        : Optional.empty();
  }

  private record Stand(int right, Optional<LocalDate> last) {}

  /** A day on which it was wrong once counts as wrong, whatever was answered once it was told. */
  private Stand stand(String item) {
    Map<LocalDate, Boolean> days = new LinkedHashMap<>();
    answers(item).forEach(answer -> days.merge(answer.day(), answer.right(), Boolean::logicalAnd));
    int right = 0;
    Optional<LocalDate> last = Optional.empty();
    for (Map.Entry<LocalDate, Boolean> day : days.entrySet()) {
      LocalDate at = day.getKey();
      if (!day.getValue()) {
        right = 0;
        last = Optional.of(at);
      } else if (last.isEmpty() || !at.isBefore(last.get().plusDays(gapDays))) {
        right++;
        last = Optional.of(at);
      }
    }
    return new Stand(right, last);
  }
}
