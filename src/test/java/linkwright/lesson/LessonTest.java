package linkwright.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.routine.Routine;
import org.junit.jupiter.api.Test;

/** What is missed comes back, and is not known. */
class LessonTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
  private static final long SEED = 20261126;
  private static final Library SHIPPED = Library.load(new Home(Path.of("target/no-such-home")));

  private static List<Item> bank(String routine) {
    Routine found = SHIPPED.routines().get(routine);
    return QuestionBankTest.bank(found);
  }

  private static Lesson lesson(String id, List<Item> bank, Recall learnt, LocalDate day) {
    return new Lesson(id, bank, learnt, day, List.of());
  }

  private static Recall and(Recall learnt, String item, LocalDate day, boolean right) {
    Map<String, List<Recall.Answer>> more = new HashMap<>(learnt.items());
    List<Recall.Answer> all = new ArrayList<>(learnt.answers(item));
    all.add(new Recall.Answer(day, right));
    more.put(item, all);
    return new Recall(more, learnt.gapDays());
  }

  private static Lesson and(Lesson lesson, Item item, boolean right) {
    List<Lesson.LessonAnswer> more = new ArrayList<>(lesson.asked());
    more.add(new Lesson.LessonAnswer(item.id(), right));
    Recall now = and(lesson.learnt(), item.id(), lesson.today(), right);
    return new Lesson(lesson.id(), lesson.bank(), now, lesson.today(), more);
  }

  /** A thousand lessons of a hundred students, each with her own share of right answers. */
  @Test
  void each_miss_returns_in_its_lesson_and_at_its_gap_and_none_is_known_after_a_miss() {
    Random chance = new Random(SEED);
    List<String> routines =
        List.of("round-cable", "scroll-and-ring", "torch-practice", "byzantine");
    int lessons = 0;
    int misses = 0;
    int known = 0;
    int open = 0;
    Map<String, List<Item>> banks = new HashMap<>();
    for (int student = 0; student < 100; student++) {
      List<Item> bank =
          banks.computeIfAbsent(routines.get(student % routines.size()), LessonTest::bank);
      double share = 0.4 + 0.55 * chance.nextDouble();
      Recall learnt = new Recall(Map.of(), Recall.GAP_DAYS);
      Map<String, LocalDate> wrongOn = new HashMap<>();
      Map<String, Set<LocalDate>> rightSince = new HashMap<>();
      LocalDate day = FIRST;
      for (int round = 0; round < 10; round++) {
        String as = "seed " + SEED + ", student " + student + ", lesson " + round;
        LocalDate today = day;
        Lesson lesson = lesson("l" + round, bank, learnt, day);
        // What was missed and is due comes before all that is new.
        List<Item> due = lesson.due();
        Set<String> missedHere = new HashSet<>();
        Set<String> rightAfterMiss = new HashSet<>();
        List<String> order = new ArrayList<>();
        for (Optional<Item> next = lesson.next(); next.isPresent(); next = lesson.next()) {
          Item item = next.get();
          boolean again = missedHere.contains(item.id());
          boolean right = chance.nextDouble() < (again ? 0.7 : share);
          order.add(item.id());
          lesson = and(lesson, item, right);
          if (right) {
            if (again) {
              rightAfterMiss.add(item.id());
            }
            rightSince.computeIfAbsent(item.id(), any -> new HashSet<>()).add(day);
          } else {
            misses++;
            missedHere.add(item.id());
            rightAfterMiss.remove(item.id());
            wrongOn.put(item.id(), day);
            rightSince.remove(item.id());
            assertThat(lesson.learnt().known(item.id())).as(as).isFalse();
            if (lesson.back(item) == Lesson.Back.AT_ONCE) {
              assertThat(item.caution()).as(as).isNotEmpty();
              assertThat(lesson.next().map(Item::id)).as(as).contains(item.id());
            }
          }
          assertThat(order.size()).as(as).isLessThan(80);
        }
        learnt = lesson.learnt();
        lessons++;
        Set<String> settled = new HashSet<>(rightAfterMiss);
        lesson.open().forEach(item -> settled.add(item.id()));
        assertThat(settled)
            .as(as + ": each came back till it was right, or stays open")
            .isEqualTo(missedHere);
        open += lesson.open().size();
        assertThat(missedHere)
            .as(as + ": each came back in its lesson")
            .allMatch(item -> Collections.frequency(order, item) > 1);
        List<String> dueMissed =
            due.stream()
                .filter(item -> wrongOn.containsKey(item.id()) && !missedHere.contains(item.id()))
                .map(Item::id)
                .limit(1)
                .toList();
        if (lesson.misses() < Lesson.ENOUGH) {
          assertThat(order).as(as).containsAll(dueMissed);
        }
        for (String item : missedHere) {
          // The day after it is asked first; from then on, kept or not, at its gap.
          assertThat(learnt.due(item)).as(as).contains(today.plusDays(1));
          assertThat(and(learnt, item, today.plusDays(1), true).due(item))
              .as(as)
              .contains(today.plusDays(Recall.GAP_DAYS));
        }
        for (Item item : bank) {
          if (learnt.known(item.id())) {
            known++;
            LocalDate wrong = wrongOn.getOrDefault(item.id(), FIRST.minusYears(1));
            long days =
                rightSince.getOrDefault(item.id(), Set.of()).stream()
                    .filter(on -> on.isAfter(wrong))
                    .count();
            assertThat(days).as(as + " " + item.id()).isGreaterThanOrEqualTo(3);
          }
        }
        day = day.plusDays(chance.nextInt(4) == 0 ? 3 : 7);
      }
    }
    assertThat(lessons).isEqualTo(1000);
    assertThat(misses).isGreaterThan(1000);
    assertThat(known).isGreaterThan(100);
    assertThat(open).isPositive();
  }

  @Test
  void a_miss_comes_back_after_three_others_and_then_at_equal_gaps_till_right_on_three_days() {
    List<Item> bank =
        bank("round-cable").stream().filter(item -> item.caution().isEmpty()).toList();
    Lesson lesson = lesson("one", bank, new Recall(Map.of(), 7), FIRST);
    Item missed = lesson.next().orElseThrow();
    lesson = and(lesson, missed, false);
    for (int i = 0; i < 3; i++) {
      Item other = lesson.next().orElseThrow();
      assertThat(other).isNotEqualTo(missed);
      lesson = and(lesson, other, true);
    }
    assertThat(lesson.next()).contains(missed);
    lesson = and(lesson, missed, true);
    Recall learnt = lesson.learnt();
    assertThat(learnt.daysRight(missed.id())).isZero();
    assertThat(learnt.due(missed.id())).contains(FIRST.plusDays(1));
    learnt = and(learnt, missed.id(), FIRST.plusDays(1), true);
    assertThat(learnt.daysRight(missed.id())).as("a day within the gap").isZero();
    for (int week = 1; week <= 3; week++) {
      LocalDate day = FIRST.plusDays(7L * week);
      assertThat(learnt.known(missed.id())).isFalse();
      assertThat(learnt.due(missed.id())).contains(day);
      Lesson next = lesson("week " + week, bank, learnt, day);
      assertThat(next.next()).contains(missed);
      // A day too early it is not asked, and would not count.
      assertThat(lesson("early", bank, learnt, day.minusDays(1)).due()).doesNotContain(missed);
      learnt = and(next, missed, true).learnt();
    }
    assertThat(learnt.known(missed.id())).isTrue();
    assertThat(learnt.due(missed.id())).isEmpty();
    Recall forgot = and(learnt, missed.id(), FIRST.plusDays(60), false);
    assertThat(forgot.known(missed.id())).isFalse();
    assertThat(forgot.due(missed.id())).contains(FIRST.plusDays(61));
  }

  /** An evening with a few misses; the next day begins with them, and asks nothing old besides. */
  @Test
  void what_was_missed_in_the_evening_is_what_the_next_day_asks_first() {
    for (Routine routine : SHIPPED.routines().values()) {
      Random chance = new Random(SEED + routine.id().hashCode());
      Lesson evening = lesson("evening", bank(routine.id()), new Recall(Map.of(), 7), FIRST);
      Set<String> missed = new HashSet<>();
      for (Optional<Item> next = evening.next(); next.isPresent(); next = evening.next()) {
        boolean right = missed.contains(next.get().id()) || chance.nextInt(3) > 0;
        evening = and(evening, next.get(), right);
        if (!right) {
          missed.add(next.get().id());
        }
      }
      Lesson morning = lesson("next day", evening.bank(), evening.learnt(), FIRST.plusDays(1));
      Set<String> first = new HashSet<>();
      for (int i = 0; i < missed.size(); i++) {
        Item asked = morning.next().orElseThrow();
        first.add(asked.id());
        morning = and(morning, asked, true);
      }
      assertThat(first).as(routine.id() + ", seed " + SEED).isEqualTo(missed).isNotEmpty();
      assertThat(morning.due()).as("the next is new").isEmpty();
    }
  }

  /** However often: its card is shown whole and it is asked anew, till it was right. */
  @Test
  void a_caution_that_is_missed_is_asked_again_before_anything_else_till_it_is_right() {
    List<Item> bank = bank("round-cable");
    Item missed = bank.stream().filter(item -> !item.caution().isEmpty()).findFirst().orElseThrow();
    Lesson lesson = and(lesson("one", bank, new Recall(Map.of(), 7), FIRST), missed, false);
    for (int i = 1; i <= 6; i++) {
      assertThat(lesson.back(missed)).as("after " + i).isEqualTo(Lesson.Back.AT_ONCE);
      assertThat(lesson.next()).as("after " + i).contains(missed);
      lesson = and(lesson, missed, false);
    }
    lesson = and(lesson, missed, true);
    assertThat(lesson.next()).isPresent().get().isNotEqualTo(missed);
    Lesson left = lesson("the same day", bank, lesson.learnt(), FIRST.plusDays(1));
    assertThat(left.next()).as("first of all on the next day").contains(missed);
  }

  /**
   * Who knows nothing is not asked without end: each comes back, then rests till the next day; a
   * caution is right at the fourth showing of its card.
   */
  @Test
  void a_lesson_of_misses_ends_with_them_open_and_all_of_them_first_on_the_next_day() {
    for (Routine routine : SHIPPED.routines().values()) {
      Lesson lesson = lesson("one", bank(routine.id()), new Recall(Map.of(), 7), FIRST);
      List<String> order = new ArrayList<>();
      for (Optional<Item> next = lesson.next(); next.isPresent(); next = lesson.next()) {
        String asked = next.get().id();
        boolean shownOften = Collections.frequency(order, asked) > 3;
        order.add(asked);
        lesson = and(lesson, next.get(), shownOften && !next.get().caution().isEmpty());
        assertThat(order.size()).as(routine.id() + " goes on").isLessThan(60);
      }
      Set<String> missed = new HashSet<>(order);
      assertThat(missed).as(routine.id()).allMatch(item -> Collections.frequency(order, item) > 1);
      Lesson ended = lesson;
      assertThat(lesson.open().stream().map(Item::id))
          .containsExactlyInAnyOrderElementsOf(
              missed.stream().filter(id -> !isOfCaution(ended, id)).toList());
      Lesson morning = lesson("next", lesson.bank(), lesson.learnt(), FIRST.plusDays(1));
      assertThat(morning.due().stream().map(Item::id)).containsExactlyInAnyOrderElementsOf(missed);
      Lesson sameDay = lesson("more", lesson.bank(), lesson.learnt(), FIRST);
      assertThat(sameDay.due()).as("nothing of it once more today").isEmpty();
    }
  }

  private static boolean isOfCaution(Lesson lesson, String id) {
    return lesson.bank().stream()
        .anyMatch(item -> item.id().equals(id) && !item.caution().isEmpty());
  }

  /** What is missed at the very end has others between it and its return all the same. */
  @Test
  void the_last_item_missed_comes_back_after_three_that_were_right() {
    List<Item> bank =
        bank("round-cable").stream().filter(item -> item.caution().isEmpty()).toList();
    Lesson lesson = lesson("one", bank, new Recall(Map.of(), 7), FIRST);
    for (int i = 1; i < Lesson.LENGTH; i++) {
      lesson = and(lesson, lesson.next().orElseThrow(), true);
    }
    Item last = lesson.next().orElseThrow();
    lesson = and(lesson, last, false);
    for (int i = 0; i < 3; i++) {
      Item other = lesson.next().orElseThrow();
      assertThat(lesson.asked()).contains(new Lesson.LessonAnswer(other.id(), true));
      lesson = and(lesson, other, true);
    }
    assertThat(lesson.next()).contains(last);
    assertThat(and(lesson, last, true).next()).isEmpty();
  }

  @Test
  void a_right_answer_within_the_gap_is_no_day_more() {
    Recall learnt = new Recall(Map.of(), 7);
    for (int day = 0; day < 6; day++) {
      learnt = and(learnt, "x", FIRST.plusDays(day), true);
    }
    assertThat(learnt.daysRight("x")).isEqualTo(1);
  }
}
