package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;
import linkwright.wire.Springback;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How good the proposals are, beside an oracle that knows its maker. Prints the figures. */
class MakersTest {
  private static final long SEED = 20_261_125;
  private static final double WIRE_MM = 0.9;
  private static final double STEP_MM = 0.5;

  private static final Map<String, Map<String, List<Double>>> OWNED =
      Map.of(
          "hook-link", Map.of("eye", List.of(2.0, 2.5, 3.0, 3.5, 4.0, 4.5)),
          "scroll", Map.of("tip", List.of(1.0), "bow", List.of(2.5, 3.0, 3.25, 3.5, 3.75, 4.0)));

  /** Soft silver wire of about 75 GPa whose yield and tensile strength have a mean of 200 MPa. */
  private static Maker prior(Pattern pattern) {
    double formerMm =
        pattern.formersMm().values().stream().mapToDouble(mm -> mm).max().orElseThrow();
    return Maker.unknown(Springback.growth(WIRE_MM, formerMm, 75_000, 200).orElseThrow());
  }

  static MakersOutcome run(String id, int makers, int pieces, long seed) {
    Pattern pattern = PatternFiles.named(id);
    MakersSimulation simulation =
        new MakersSimulation(
            pattern, WIRE_MM, OWNED.get(id), prior(pattern), STEP_MM, pieces, seed);
    MakersOutcome outcome = simulation.run(makers);
    System.out.println(outcome.table(id + ", " + makers + " makers, seed " + seed));
    return outcome;
  }

  private static void within(MakersOutcome outcome, int pieces, double times) {
    String table = outcome.table("");
    assertThat(outcome.fitted().get(pieces).median())
        .as(table)
        .isLessThanOrEqualTo(times * outcome.oracle().median());
    assertThat(outcome.fitted().get(pieces).ninth())
        .as(table)
        .isLessThanOrEqualTo(times * outcome.oracle().ninth());
  }

  @ParameterizedTest
  @ValueSource(strings = {"hook-link", "scroll"})
  void fiveHundredMakersComeNearTheOracle(String id) {
    MakersOutcome outcome = run(id, 500, 2, SEED);
    assertThat(outcome.fitted().get(0).median()).as(outcome.table("")).isLessThan(0.06);
    within(outcome, 1, 1.5);
    within(outcome, 2, 1.3);
    // A stated spread is one standard deviation: it should hold for about two pieces in three.
    outcome
        .fitted()
        .forEach(
            errors ->
                assertThat(errors.withinOneSpread()).as(outcome.table("")).isBetween(0.62, 0.75));
  }
}
