package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fit against a second method that knows nothing of slopes: makers drawn from the prior, each
 * weighed by how well it explains the piece, with the eyes' noise drawn too.
 */
class PosteriorReferenceTest {
  private static final long SEED = 4_711;
  private static final int DRAWN = 200_000;

  @ParameterizedTest
  @CsvSource({"15.6, 4.9", "14.2, 4.7", "16.4, 5.1"})
  void whatAPieceTeachesOfTheNextAgreesWithWeighedDraws(double lengthMm, double widthMm) {
    Pattern hook = PatternFiles.named("hook-link");
    Maker prior = Maker.unknown(1.02);
    Map<String, Double> eye = Map.of("eye", 3.0);
    Tried piece = Tried.measured(30, eye, lengthMm, widthMm);
    Maker fitted = Fit.learn(hook, 0.9, prior, List.of(piece), new LinkSize(15, 5));
    Shape shape = new PatternShape(hook, 0.9);

    Random random = new Random(SEED);
    double weights = 0;
    double mean = 0;
    double square = 0;
    for (int i = 0; i < DRAWN; i++) {
      Maker drawn =
          new Maker(
              1.02 + 0.03 * random.nextGaussian(),
              0.5 * random.nextGaussian(),
              12 * random.nextGaussian(),
              prior.covariance());
      double turn = Noise.meanTurnDeg(2) * random.nextGaussian();
      Optional<FormedSize> made = shape.size(30, eye, drawn.turned(turn));
      Optional<FormedSize> next = shape.size(31, eye, drawn);
      if (made.isPresent() && next.isPresent()) {
        double l = (made.get().lengthMm() - lengthMm) / Noise.CALIPER_MM;
        double w = (made.get().widthMm() - widthMm) / Noise.CALIPER_MM;
        double weight = Math.exp(-(l * l + w * w) / 2);
        weights += weight;
        mean += weight * next.get().lengthMm();
        square += weight * next.get().lengthMm() * next.get().lengthMm();
      }
    }
    mean /= weights;
    double spread = Math.sqrt(square / weights - mean * mean);

    Expected expected = Fit.expect(hook, 0.9, fitted, 31, eye).orThrow();
    Noise noise =
        Sensitivity.of(shape, 31, eye, fitted, fitted.covariance().root()).orElseThrow().noise();
    double ofMaker =
        Math.sqrt(Math.pow(expected.lengthSpreadMm(), 2) - Math.pow(noise.lengthMm(), 2));
    assertThat(expected.lengthMm()).as("seed %d", SEED).isCloseTo(mean, within(0.04));
    assertThat(ofMaker).as("seed %d", SEED).isCloseTo(spread, within(0.02));
  }
}
