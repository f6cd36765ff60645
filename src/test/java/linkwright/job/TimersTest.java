package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TimersTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
  private static final Entry PICKLE =
      new Entry(1, MORNING, "bench", new Fact.TimerStarted("Pickle the links", 480));
  private static final Entry TUMBLE =
      new Entry(2, MORNING.plusSeconds(60), "bench", new Fact.TimerStarted("Tumble", 60));

  private static Timers after(Entry... entries) {
    return JobState.replay(List.of(entries), routine -> Map.of()).timers();
  }

  @Test
  void a_timer_runs_towards_its_end_and_rings_from_then_on() {
    TimerRun timer = after(PICKLE).running().get(0);
    assertThat(timer.left(MORNING.plusSeconds(300))).isEqualTo(Duration.ofMinutes(3));
    assertThat(timer.rings(MORNING.plusSeconds(479))).isFalse();
    assertThat(timer.rings(MORNING.plusSeconds(480))).isTrue();
    assertThat(timer.left(MORNING.plusSeconds(500))).isEqualTo(Duration.ofSeconds(-20));
  }

  @Test
  void a_timer_that_ran_out_while_the_program_was_away_rings_when_the_book_is_read_again() {
    Instant nextDay = MORNING.plus(Duration.ofDays(1));
    assertThat(after(PICKLE).ringing(nextDay))
        .extracting(TimerRun::name)
        .containsExactly("Pickle the links");
  }

  @Test
  void one_that_still_runs_does_not_ring_beside_one_that_does() {
    assertThat(after(PICKLE, TUMBLE).ringing(MORNING.plusSeconds(120)))
        .extracting(TimerRun::name)
        .containsExactly("Tumble");
  }

  @Test
  void stepping_away_does_not_stop_it() {
    Entry away = new Entry(3, MORNING, "bench", new Fact.SteppedAway(true, true, true));
    assertThat(after(PICKLE, away).running()).hasSize(1);
  }

  @Test
  void it_rings_until_it_is_answered() {
    Entry answer = new Entry(3, MORNING, "bench", new Fact.TimerAnswered(PICKLE.id()));
    assertThat(after(PICKLE, TUMBLE, answer).running())
        .extracting(TimerRun::name)
        .containsExactly("Tumble");
  }

  @Test
  void the_next_one_is_the_one_that_ends_first() {
    assertThat(after(PICKLE, TUMBLE).next()).map(TimerRun::name).contains("Tumble");
  }

  @Test
  void a_struck_timer_never_ran() {
    Entry strike = new Entry(3, MORNING, "bench", new Fact.Struck(PICKLE.id(), "wrong step"));
    assertThat(after(PICKLE, strike).running()).isEmpty();
  }
}
