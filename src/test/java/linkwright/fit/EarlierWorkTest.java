package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * What three earlier jobs teach of a fourth. Few makers in the build; the benchmark has 1,000:
 *
 * <pre>mvn test -Dtest=EarlierWorkTest -Dlinkwright.benchmark=true</pre>
 */
class EarlierWorkTest {
  private static final long SEED = 20_261_126;
  private static final double STRESS = 200.0 / 75_000;

  @Test
  void withoutEarlierJobsNobodyIsKnown() {
    assertThat(EarlierWork.prior(STRESS, List.of())).isEqualTo(Maker.unknown(STRESS));
  }

  @Test
  void theFirstPieceOfAFourthJobComesNearerThanThatOfANewMaker() {
    HandsSimulation simulation = new HandsSimulation(SEED, false, 0).run(150, 0);
    System.out.println(simulation.table() + ", seed " + SEED);
    double taught = HandsSimulation.quantile(simulation.taught, 0.5);
    assertThat(taught)
        .as(simulation.table())
        .isLessThan(0.5 * HandsSimulation.quantile(simulation.fresh, 0.5));
  }

  @Test
  void whatIsTaughtAgreesWithAWalkThroughAllThatIsNotKnown() {
    HandsSimulation simulation = new HandsSimulation(SEED, false, 3000).run(40, 0);
    System.out.println(simulation.table() + ", seed " + SEED);
    assertThat(HandsSimulation.quantile(simulation.taught, 0.5))
        .as(simulation.table())
        .isLessThan(1.35 * HandsSimulation.quantile(simulation.exact, 0.5));
  }

  @Test
  void handsThatChangedAreBelievedAfterTwoPieces() {
    HandsSimulation simulation = new HandsSimulation(SEED, true, 0).run(150, 2);
    System.out.println(simulation.table() + ", seed " + SEED);
    assertThat(HandsSimulation.quantile(simulation.taught, 0.5))
        .as(simulation.table())
        .isLessThan(1.25 * HandsSimulation.quantile(simulation.fresh, 0.5));
  }

  /** The figures with 1,000 makers, printed and judged. */
  @Test
  @Tag("benchmark")
  @EnabledIfSystemProperty(named = "linkwright.benchmark", matches = "true")
  void manyMakers() {
    HandsSimulation walked = new HandsSimulation(1, false, 4000).run(1000, 0);
    System.out.println(walked.table() + ", seed 1");
    for (int pieces = 0; pieces <= 2; pieces++) {
      System.out.println(
          "after " + pieces + ": " + new HandsSimulation(1, true, 0).run(1000, pieces).table());
      System.out.println(
          "after " + pieces + ": " + new HandsSimulation(1, false, 0).run(1000, pieces).table());
    }
    for (double share : new double[] {0.5, 0.9}) {
      assertThat(HandsSimulation.quantile(walked.taught, share))
          .as(walked.table())
          .isLessThan(1.1 * HandsSimulation.quantile(walked.exact, share))
          .isLessThan(0.5 * HandsSimulation.quantile(walked.fresh, share));
    }
  }
}
