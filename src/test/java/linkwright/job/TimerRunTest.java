package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimerRunTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
  private static final StepId PICKLE = new StepId("pickle");

  private static TimerRun of(Fact.TimerStarted started) {
    return TimerRun.of(started, new Entry(1, MORNING, "bench", started));
  }

  private static TimerRun own(long seconds) {
    return of(new Fact.TimerStarted("Pickle the links", seconds));
  }

  private static TimerRun wait(Map<OnWay, Integer> goesIn) {
    return of(new Fact.TimerStarted("Pickle the links", 480, new WaitId("clean"), PICKLE, goesIn));
  }

  private static OnWay way(PieceKind piece, boolean redo) {
    return new OnWay(piece, Stage.PICKLED, redo, "");
  }

  /**
   * A clock set back adds nothing; over for an hour, or for as long again, it counts no further.
   */
  @ParameterizedTest(name = "set for {0} s, {1} s later: {2} s")
  @CsvSource({
    "480, -60, 480",
    "480, 0, 480",
    "480, 479, 1",
    "480, 480, 0",
    "480, 500, -20",
    "480, 4080, -3600",
    "480, 4081, -3600",
    "7200, 14400, -7200",
    "7200, 14401, -7200"
  })
  void what_is_left(long seconds, long later, long left) {
    assertThat(own(seconds).left(MORNING.plusSeconds(later))).isEqualTo(Duration.ofSeconds(left));
  }

  /** A quarter of 480 s is 120 s. */
  @Test
  void before_a_quarter_of_its_time_it_has_barely_begun() {
    assertThat(own(480).barelyBegun(MORNING)).isTrue();
    assertThat(own(480).barelyBegun(MORNING.plusSeconds(119))).isTrue();
    assertThat(own(480).barelyBegun(MORNING.plusSeconds(120))).isFalse();
  }

  @Test
  void a_wait_is_of_its_step_and_a_timer_of_her_own_of_none() {
    assertThat(wait(Map.of()).isOf(PICKLE)).isTrue();
    assertThat(wait(Map.of()).isOf(new StepId("solder"))).isFalse();
    assertThat(own(480).step()).isEqualTo(Optional.empty());
    assertThat(own(480).isOf(StepId.NONE)).isFalse();
  }

  @Test
  void it_is_named_with_all_that_went_in() {
    assertThat(own(480).named()).isEqualTo("Pickle the links");
    assertThat(wait(Map.of(way(PieceKind.LINK, false), 6)).named())
        .isEqualTo("Pickle the links, 6 links");
    Map<OnWay, Integer> mixed =
        Map.of(
            way(PieceKind.LINK, false), 4,
            way(PieceKind.LINK, true), 2,
            way(PieceKind.RING, true), 1);
    assertThat(wait(mixed).named()).isEqualTo("Pickle the links, 1 ring, 6 links");
  }
}
