package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Timers by a clock that cannot be set, and how old an entry is where the other one was. */
class TimersSteadiedTest {
  private static final Instant EIGHT = Instant.parse("2026-03-02T08:00:00Z");

  /** What the steady clock says when the computer's says it is now. */
  private static final Instant STEADY = Instant.EPOCH.plusSeconds(5000);

  private static Instant past(int minutes) {
    return EIGHT.plusSeconds(60L * minutes);
  }

  /** Timers set so many minutes after eight, numbered from 1. */
  private static Timers set(int... minutes) {
    Timers timers = Timers.NONE;
    for (int i = 0; i < minutes.length; i++) {
      Fact fact = new Fact.TimerStarted("Pickle", 480);
      timers = timers.after(new Entry(i + 1, past(minutes[i]), "bench", fact));
    }
    return timers;
  }

  private static List<Instant> starts(Timers timers) {
    return timers.running().stream().map(TimerRun::startedAt).toList();
  }

  @Test
  void a_timer_runs_since_as_long_as_the_computers_clock_says_it_was_set() {
    Timers steady = set(1, 3).steadied(Timers.NONE, ClockMoves.NONE, past(5), STEADY);
    assertThat(starts(steady)).containsExactly(STEADY.minusSeconds(240), STEADY.minusSeconds(120));
  }

  @Test
  void one_that_ran_before_goes_on_as_it_did_whatever_the_clock_says_now() {
    Timers before = set(0).steadied(Timers.NONE, ClockMoves.NONE, past(0), STEADY);
    Timers later = set(0, 90).steadied(before, ClockMoves.NONE, past(90), STEADY.plusSeconds(60));
    assertThat(starts(later)).containsExactly(STEADY, STEADY.plusSeconds(60));
  }

  @Test
  void one_that_the_clock_says_was_set_later_than_now_was_set_now() {
    Timers steady = set(10).steadied(Timers.NONE, ClockMoves.NONE, past(5), STEADY);
    assertThat(starts(steady)).containsExactly(STEADY);
  }

  /** Set at 8:01; after 8:02 the clock went forward by an hour; at 9:05 that is 4 minutes ago. */
  @Test
  void what_was_set_before_the_clock_went_forward_is_not_as_old_as_its_time_says() {
    ClockMoves moves = new ClockMoves(List.of(new ClockMoves.Move(past(2), Duration.ofHours(1))));
    assertThat(starts(set(1).steadied(Timers.NONE, moves, past(65), STEADY)))
        .containsExactly(STEADY.minusSeconds(240));
    assertThat(moves.age(past(2), past(65))).isEqualTo(Duration.ofMinutes(3));
    assertThat(moves.age(past(63), past(65))).isEqualTo(Duration.ofMinutes(2));
    assertThat(ClockMoves.NONE.age(past(1), past(65))).isEqualTo(Duration.ofMinutes(64));
  }

  @Test
  void a_job_shows_the_timers_and_the_money_it_is_given_and_keeps_the_rest() {
    JobState job =
        ShortBook.state(
            new Fact.JobOpened("Anklet", "cable"),
            new Fact.MetalWeighedOut(14.5, "wire"),
            new Fact.TimerStarted("Pickle", 480));
    Timers others = set(1, 2);
    assertThat(job.with(others).timers()).isEqualTo(others);
    assertThat(job.with(others).with(job.timers())).isEqualTo(job);
    Accounts money = Accounts.EMPTY.after(new Fact.PricesSet(Map.of(PriceList.HOUR, 30.0), "£"));
    assertThat(job.with(money).accounts()).isEqualTo(money);
    assertThat(job.with(money).with(job.accounts())).isEqualTo(job);
  }
}
