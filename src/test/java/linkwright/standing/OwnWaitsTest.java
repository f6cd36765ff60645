package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.Pickle;
import linkwright.plan.FigureSource;
import linkwright.routine.Routine;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Waits and hours: hers before what is usual. */
class OwnWaitsTest {
  private static OwnBench bench(OptionalLong pickleSeconds, Map<String, Long> waits) {
    return new OwnBench(
        "",
        List.of(),
        Optional.empty(),
        Map.of(),
        List.of(),
        OptionalDouble.empty(),
        Flame.NOT_SAID,
        new Pickle("", pickleSeconds, Optional.empty()),
        List.of(),
        OwnPrices.NONE,
        Map.of(),
        Map.of(),
        OptionalLong.empty(),
        waits,
        List.of());
  }

  /** Her bench says ten minutes of pickle, one hour of tumbling, two minutes of the wait "rest". */
  @ParameterizedTest
  @CsvSource({
    "w1, Pickle the links, LOOK, 600",
    "hot-pickle, Acid, LOOK, 600",
    "w2, Tumble, TIME, 3600",
    "w2, TUMBLE, TIME, 3600",
    "Rest, Let it cool, TIME, 120",
    "w3, Let it cool, TIME, -1",
    "w4, Pickle and watch, WATCH, -1",
    "rest, Fire watch, WATCH, -1",
  })
  void a_wait_takes_as_long_as_her_bench_says_of_it(
      String id, String name, WaitEnds ends, long seconds) {
    OwnBench hers = bench(OptionalLong.of(600), Map.of("tumble", 3600L, "rest", 120L));
    assertThat(OwnWaits.seconds(new Wait(new WaitId(id), name, 480, ends), hers).orElse(-1))
        .isEqualTo(seconds);
  }

  private static List<Long> seconds(Routine routine, String named) {
    return routine.steps().stream()
        .flatMap(step -> step.waits().stream())
        .filter(wait -> wait.name().contains(named))
        .map(Wait::seconds)
        .toList();
  }

  /** The scroll chain is pickled for 8 minutes and tumbled for 30, as its routine says. */
  @Test
  void a_routine_is_walked_with_her_waits() {
    Routine shipped = JobBook.HANDBOOK.routine("scroll-and-ring").orElseThrow();
    Routine hers = OwnWaits.in(shipped, bench(OptionalLong.of(600), Map.of()));
    assertThat(seconds(hers, "Pickle")).isNotEmpty().containsOnly(600L);
    assertThat(seconds(hers, "Tumble")).containsExactly(1800L);
    Routine none = OwnWaits.in(shipped, bench(OptionalLong.empty(), Map.of()));
    assertThat(seconds(none, "Pickle")).isNotEmpty().containsOnly(480L);
    Routine tumbled = OwnWaits.in(shipped, bench(OptionalLong.empty(), Map.of("tumble", 0L)));
    assertThat(seconds(tumbled, "Tumble")).as("no wait is nothing").containsExactly(1L);
    assertThat(seconds(tumbled, "Pickle")).containsOnly(480L);
  }

  /** One hour spent, two to go, give or take half an hour. */
  @Test
  void hours_of_a_job_are_those_spent_and_those_to_go() {
    JobHours hours = new JobHours(3600, new Forecast(7200, 1800, true));
    assertThat(hours.hours()).isEqualTo(3);
    assertThat(hours.hoursToGo()).isEqualTo(2);
    assertThat(hours.plusMinus()).isEqualTo(0.5);
    assertThat(hours.from()).isEqualTo(FigureSource.LEARNED);
    assertThat(new JobHours(0, new Forecast(1, 1, false)).from()).isEqualTo(FigureSource.USUAL);
  }
}
