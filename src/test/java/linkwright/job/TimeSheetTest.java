package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TimeSheetTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
  private static final Offset<Double> TO_THE_MILLISECOND = Offset.offset(0.001);

  private TimeSheet sheet = TimeSheet.EMPTY;
  private int number = 1;
  private Instant now = MORNING;

  private TimeSheetTest enter(Fact fact) {
    sheet = sheet.after(new Entry(number++, now, "bench", fact));
    return this;
  }

  private TimeSheetTest pass(Duration time) {
    now = now.plus(time);
    return this;
  }

  private TimeSheetTest atTheBench(String step) {
    return enter(new Fact.SittingStarted("")).enter(new Fact.StepOpened(new StepId(step)));
  }

  private static Fact through(int count, String step) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, count), Stage.SOLDERED, false, new StepId(step));
  }

  private static Fact away() {
    return new Fact.SteppedAway(true, true, true);
  }

  @Test
  void six_links_soldered_in_twenty_minutes_and_counted_in_two_seconds_take_twenty_minutes() {
    atTheBench("solder").pass(Duration.ofMinutes(20));
    for (int i = 0; i < 6; i++) {
      enter(through(1, "solder")).pass(Duration.ofMillis(400));
    }
    assertThat(sheet.throughByStep()).containsEntry(new StepId("solder"), 6);
    assertThat(sheet.totalSeconds()).isCloseTo(20 * 60 + 5 * 0.4, TO_THE_MILLISECOND);
  }

  @Test
  void time_belongs_to_the_step_that_was_open_when_it_passed() {
    atTheBench("cut").pass(Duration.ofMinutes(3)).enter(new Fact.StepOpened(new StepId("form")));
    pass(Duration.ofMinutes(7)).enter(through(1, "form"));
    assertThat(sheet.secondsByStep())
        .containsEntry(new StepId("cut"), 180.0)
        .containsEntry(new StepId("form"), 420.0);
  }

  @Test
  void several_pieces_at_once_are_one_time_through() {
    atTheBench("pickle").pass(Duration.ofMinutes(8)).enter(through(22, "pickle"));
    assertThat(sheet.throughByStep()).containsEntry(new StepId("pickle"), 22);
    assertThat(sheet.timesByStep()).containsEntry(new StepId("pickle"), 1);
  }

  @Test
  void links_and_rings_of_one_act_are_one_time_through_and_count_as_the_more_of_them() {
    atTheBench("pickle").pass(Duration.ofMinutes(8));
    enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 4, PieceKind.RING, 6),
            Stage.PICKLED,
            false,
            new StepId("pickle")));
    assertThat(sheet.throughByStep()).containsEntry(new StepId("pickle"), 6);
    assertThat(sheet.timesByStep()).containsEntry(new StepId("pickle"), 1);
  }

  @Test
  void two_entries_of_one_moment_are_one_act() {
    atTheBench("check").pass(Duration.ofMinutes(1)).enter(through(4, "check"));
    enter(through(2, "check"));
    assertThat(sheet.timesByStep()).containsEntry(new StepId("check"), 1);
    assertThat(sheet.throughByStep()).containsEntry(new StepId("check"), 6);
    pass(Duration.ofSeconds(1)).enter(through(1, "check"));
    assertThat(sheet.timesByStep()).containsEntry(new StepId("check"), 2);
  }

  @Test
  void blanks_cut_count_at_the_step_that_is_open() {
    atTheBench("cut-blanks")
        .pass(Duration.ofMinutes(1))
        .enter(new Fact.WireCut(PieceKind.LINK, 5, 38));
    assertThat(sheet.throughByStep()).containsEntry(new StepId("cut-blanks"), 5);
    assertThat(sheet.timesByStep()).containsEntry(new StepId("cut-blanks"), 1);
  }

  @Test
  void before_a_sitting_begins_nothing_counts() {
    enter(new Fact.StepOpened(new StepId("form")))
        .pass(Duration.ofMinutes(5))
        .enter(through(1, "form"));
    assertThat(sheet.totalSeconds()).isZero();
    assertThat(sheet.seenAt()).isEmpty();
    assertThat(sheet.sittingAt(now)).isFalse();
    enter(new Fact.SittingStarted(""));
    assertThat(sheet.seenAt()).isPresent();
  }

  @Nested
  class Breaks {
    @Test
    void stepping_away_stops_the_hours_until_the_bench_is_taken_again() {
      atTheBench("form").pass(Duration.ofMinutes(10)).enter(away());
      pass(Duration.ofMinutes(45)).enter(new Fact.SittingStarted(""));
      pass(Duration.ofMinutes(5)).enter(through(1, "form"));
      assertThat(sheet.totalSeconds()).isEqualTo(15 * 60);
    }

    @Test
    void a_silence_of_an_hour_still_counts() {
      atTheBench("form").pass(Duration.ofMinutes(60)).enter(through(1, "form"));
      assertThat(sheet.totalSeconds()).isEqualTo(3600);
    }

    @Test
    void a_longer_silence_is_a_break_and_ends_the_sitting() {
      atTheBench("form").pass(Duration.ofMinutes(61));
      assertThat(sheet.sittingAt(now)).isFalse();
      enter(new Fact.SittingStarted("")).pass(Duration.ofMinutes(2)).enter(through(1, "form"));
      assertThat(sheet.totalSeconds()).isEqualTo(120);
      assertThat(sheet.sittingAt(now)).isTrue();
    }

    @Test
    void closing_the_job_ends_the_sitting() {
      atTheBench("form").pass(Duration.ofMinutes(2)).enter(new Fact.JobClosed(""));
      pass(Duration.ofMinutes(20)).enter(new Fact.Noted("looked at it again"));
      assertThat(sheet.totalSeconds()).isEqualTo(120);
    }

    @Test
    void a_silence_of_just_an_hour_leaves_the_sitting_going_on() {
      atTheBench("form").pass(Duration.ofMinutes(60));
      assertThat(sheet.sittingAt(now)).isTrue();
      assertThat(sheet.sittingAt(now.plusMillis(1))).isFalse();
    }

    @Test
    void beginning_a_sitting_that_goes_on_loses_no_time() {
      atTheBench("form").pass(Duration.ofMinutes(9)).enter(new Fact.SittingStarted(""));
      assertThat(sheet.totalSeconds()).isEqualTo(540);
    }
  }

  @Nested
  class AClockThatGoesBackwards {
    @Test
    void takes_no_time_away_and_adds_none_twice() {
      atTheBench("form").pass(Duration.ofMinutes(10)).enter(through(1, "form"));
      pass(Duration.ofMinutes(-30)).enter(through(1, "form"));
      assertThat(sheet.totalSeconds()).isEqualTo(600);
      pass(Duration.ofMinutes(31)).enter(through(1, "form"));
      assertThat(sheet.totalSeconds()).isEqualTo(660);
      assertThat(sheet.sittingAt(MORNING)).isTrue();
    }
  }

  @Test
  void typing_prices_and_reading_what_they_come_to_is_no_work() {
    atTheBench("finish").pass(Duration.ofMinutes(10)).enter(through(1, "finish"));
    Fact prices = new Fact.PricesSet(Map.of("hour", 28.0), "EUR");
    enter(prices);
    double worked = sheet.totalSeconds();
    pass(Duration.ofMinutes(4)).enter(prices).pass(Duration.ofMinutes(6)).enter(prices);
    assertThat(sheet.totalSeconds()).isEqualTo(worked);
    pass(Duration.ofMinutes(1)).enter(new Fact.JobClosed(""));
    assertThat(sheet.totalSeconds()).isEqualTo(worked);
  }

  @Test
  void work_that_a_note_breaks_into_is_not_lost() {
    atTheBench("solder").pass(Duration.ofMinutes(15)).enter(new Fact.Noted("a little hot"));
    pass(Duration.ofMinutes(5)).enter(through(6, "solder"));
    assertThat(sheet.totalSeconds()).isCloseTo(20 * 60, TO_THE_MILLISECOND);
  }
}
