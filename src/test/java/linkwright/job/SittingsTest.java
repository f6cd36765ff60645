package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SittingsTest {
  private static final Instant NINE = Instant.parse("2026-03-02T09:00:00Z");

  private static Entry entry(int number, String device, Fact fact) {
    return new Entry(number, NINE.plusSeconds(number), device, fact);
  }

  private static Sittings.Sat sat(String person, int since, boolean over) {
    return new Sittings.Sat(person, NINE.plusSeconds(since), over);
  }

  static Fact[] ends() {
    return new Fact[] {
      new Fact.SteppedAway(true, true, true),
      new BenchFact.SittingEnded("Ada"),
      new Fact.JobClosed("", Map.of())
    };
  }

  /** A sitting that is over stays hers, begun when it was begun; another machine's goes on. */
  @ParameterizedTest
  @MethodSource("ends")
  void a_sitting_ends_on_its_own_machine_and_stays_hers(Fact end) {
    Sittings begun =
        Sittings.NONE
            .after(entry(1, "bench", new Fact.SittingStarted("Ada")))
            .after(entry(2, "lap", new Fact.SittingStarted("Bea")))
            .after(entry(3, "bench", new Fact.Noted("lies flat")));
    assertThat(begun.last())
        .isEqualTo(Map.of("bench", sat("Ada", 1, false), "lap", sat("Bea", 2, false)));
    Sittings ended = begun.after(entry(4, "bench", end));
    assertThat(ended.last())
        .isEqualTo(Map.of("bench", sat("Ada", 1, true), "lap", sat("Bea", 2, false)));
    assertThat(ended.after(entry(5, "bench", new Fact.SittingStarted("Cleo"))).last())
        .containsEntry("bench", sat("Cleo", 5, false));
    assertThat(Sittings.NONE.after(entry(1, "bench", end))).isEqualTo(Sittings.NONE);
  }
}
