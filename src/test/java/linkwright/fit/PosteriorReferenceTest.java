package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Bending;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fit against a second method that knows nothing of slopes: makers drawn from the prior, their
 * scatter, their drift and their slips drawn too, each weighed by how well it explains the piece.
 * What is stated as the spread is what 68 of 100 next pieces of those draws keep.
 */
class PosteriorReferenceTest {
  private static final long SEED = 4_711;
  private static final int DRAWN = 300_000;

  @ParameterizedTest
  @CsvSource({"15.6, 4.9", "14.2, 4.7", "16.4, 5.1"})
  void whatAPieceTeachesOfTheNextAgreesWithWeighedDraws(double lengthMm, double widthMm) {
    Pattern hook = PatternFiles.named("hook-link");
    Maker prior = Maker.unknown(0.0027);
    Map<String, Double> eye = Map.of("eye", 3.0);
    Tried piece = ShortPieces.measured(30, eye, lengthMm, widthMm);
    Maker fitted = Fit.learn(hook, 0.9, prior, List.of(piece), new LinkSize(15, 5));
    Shape shape = new PatternShape(hook, 0.9);

    double ownMm =
        Sensitivity.of(shape, 31, eye, fitted, fitted.covariance().root())
            .orElseThrow()
            .scatter()
            .lengthMm();

    Random random = new Random(SEED);
    double weights = 0;
    double mean = 0;
    List<double[]> foreseen = new ArrayList<>();
    for (int i = 0; i < DRAWN; i++) {
      Bending drawn =
          new Bending(
              Math.max(0, 0.0027 * (1 + 0.25 * random.nextGaussian())),
              0.07 * random.nextGaussian(),
              0.5 * random.nextGaussian(),
              12 * random.nextGaussian());
      double share = share(random);
      double drift = random.nextDouble() < 0.1 ? 3 * random.nextGaussian() : 0;
      double turn = share * 4 / Math.sqrt(2) * random.nextGaussian() - drift;
      Bending then =
          new Bending(
              drawn.stressShare(),
              drawn.clearanceShare() + share * 0.01 * random.nextGaussian(),
              drawn.lostMm() + share * 0.15 * random.nextGaussian(),
              drawn.extraTurnDeg() + turn);
      Optional<FormedSize> made = shape.size(30, eye, then);
      Optional<FormedSize> next = shape.size(31, eye, drawn);
      if (made.isPresent() && next.isPresent()) {
        double weight =
            chance(made.get().lengthMm() - lengthMm, share, Math.max(1, lengthMm / 10))
                * chance(made.get().widthMm() - widthMm, share, 1);
        weights += weight;
        mean += weight * next.get().lengthMm();
        double slip = share * ownMm * random.nextGaussian();
        foreseen.add(new double[] {next.get().lengthMm() + slip, weight});
      }
    }
    mean /= weights;

    Expected expected = Fit.expect(hook, 0.9, fitted, 31, eye).orThrow();
    assertThat(expected.lengthMm()).as("seed %d", SEED).isCloseTo(mean, within(0.05));
    assertThat(expected.lengthSpreadMm())
        .as("seed %d", SEED)
        .isCloseTo(holding(foreseen, mean, 0.6827 * weights), within(0.04));
  }

  /** How far from the mean the next piece lies at most, for so much of all weight. */
  private static double holding(List<double[]> foreseen, double mean, double weight) {
    List<double[]> off =
        foreseen.stream()
            .map(one -> new double[] {Math.abs(one[0] - mean), one[1]})
            .sorted(Comparator.comparingDouble(one -> one[0]))
            .toList();
    double sum = 0;
    for (double[] one : off) {
      sum += one[1];
      if (sum >= weight) {
        return one[0];
      }
    }
    throw new AssertionError("nothing was drawn");
  }

  /** A share whose square is scaled inverse chi square with six degrees of freedom about 1. */
  private static double share(Random random) {
    double chi = 0;
    for (int i = 0; i < 6; i++) {
      chi += Math.pow(random.nextGaussian(), 2);
    }
    return Math.sqrt(6 / chi);
  }

  private static double chance(double off, double share, double farMm) {
    double near = density(off, share * 0.1);
    double far = density(off, share * Math.hypot(0.1, farMm));
    return (1 - Readings.MISREAD_CHANCE) * near + Readings.MISREAD_CHANCE * far;
  }

  private static double density(double off, double spread) {
    return Math.exp(-off * off / (2 * spread * spread)) / spread;
  }
}
