package linkwright.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PascalDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chances against exact fractions and the distributions of an outside library. */
class YieldReferenceTest {
  /** Good pieces among ten are beta-binomial (10, 2, 3): mean na/(a + b), exact fractions. */
  @Test
  void tenPiecesWithTwoGoodAndThreeLostBelieved() {
    Rate loss = new Rate(3, 2);
    double mean = 0;
    double square = 0;
    for (int good = 1; good <= 10; good++) {
      double atLeast = ChanceOfEnough.of(good, 10, loss);
      mean += atLeast;
      square += (2 * good - 1) * atLeast;
    }
    assertThat(mean).isCloseTo(4, within(1e-12));
    assertThat(square - mean * mean).isCloseTo(6, within(1e-11));
    assertThat(1 - ChanceOfEnough.of(1, 10, loss)).isCloseTo(6.0 / 91, within(1e-14));
  }

  /** Beta-binomial (27, 1, 1) is uniform on 0 to 27 (Laplace's rule of succession). */
  @Test
  void knowingNothingEveryCountIsAsLikely() {
    Rate loss = new Rate(1, 1);
    assertThat(1 - ChanceOfEnough.of(1, 27, loss)).isCloseTo(1.0 / 28, within(1e-14));
    for (int good = 1; good <= 27; good++) {
      assertThat(ChanceOfEnough.of(good, 27, loss)).isCloseTo((28.0 - good) / 28, within(1e-14));
    }
  }

  /** A known loss: negative binomial quantiles, and the library's own inverse. */
  @ParameterizedTest
  @CsvSource({
    "27, 0.95, 0.50, 1", "27, 0.95, 0.90, 3", "27, 0.95, 0.95, 4", "27, 0.95, 0.99, 5",
    "50, 0.98, 0.50, 1", "50, 0.98, 0.90, 2", "50, 0.98, 0.95, 3", "50, 0.98, 0.99, 4"
  })
  void spareBlanksForAKnownLoss(int more, double good, double confidence, int spare) {
    Rate known = new Rate((1 - good) * 1e12, good * 1e12);
    assertThat(Yield.cut(more, known, confidence))
        .isInstanceOfSatisfying(
            BlanksToCut.Blanks.class, cut -> assertThat(cut.blanks()).isEqualTo(more + spare));
    assertThat(new PascalDistribution(more, good).inverseCumulativeProbability(confidence))
        .isEqualTo(spare);
    assertThat(ChanceOfEnough.of(more, more + spare, known))
        .isCloseTo(new PascalDistribution(more, good).cumulativeProbability(spare), within(1e-9));
  }

  /** P(k) = C(n, k) B(k + a, n − k + b)/B(a, b) summed with the library's beta function. */
  @ParameterizedTest
  @CsvSource({"18, 20, 1.5, 18.5", "3, 40, 10.5, 0.5", "27, 31, 0.2, 9.8", "150, 300, 30, 42"})
  void chancesAgreeWithTheLibrarysBetaFunction(int more, int n, double lost, double good) {
    double sum = 0;
    for (int k = more; k <= n; k++) {
      sum +=
          Math.exp(
              CombinatoricsUtils.binomialCoefficientLog(n, k)
                  + Beta.logBeta(k + good, n - k + lost)
                  - Beta.logBeta(good, lost));
    }
    assertThat(ChanceOfEnough.of(more, n, new Rate(lost, good))).isCloseTo(sum, within(1e-11));
  }

  /** The binomial chance averaged over the library's Beta density by Gauss quadrature. */
  @ParameterizedTest
  @CsvSource({"18, 20, 2, 19", "5, 12, 4, 3", "30, 36, 3, 40"})
  void chancesAgreeWithQuadratureOverTheUnknownLoss(int more, int n, double lost, double good) {
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(100, 0, 1);
    BetaDistribution believed = new BetaDistribution(lost, good);
    double expected =
        gauss.integrate(
            p ->
                believed.density(p)
                    * (1 - new BinomialDistribution(n, 1 - p).cumulativeProbability(more - 1)));
    assertThat(ChanceOfEnough.of(more, n, new Rate(lost, good))).isCloseTo(expected, within(1e-10));
  }
}
