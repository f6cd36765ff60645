package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpringbackReferenceTest {
  /** Moment over the yield moment of a round bar, computed once with a numerical library. */
  @ParameterizedTest
  @CsvSource({"0, 0", "0.5, 0.5", "1, 1", "1.5, 1.34709", "2, 1.49366", "10, 1.68918"})
  void theMomentRisesAsItWasComputedElsewhere(double bentShare, double ratio) {
    assertThat(Springback.momentRatio(bentShare)).isCloseTo(ratio, within(0.000005));
  }

  /** Shape factor of a round bar, 16/(3π) = 1.69765. Source: any text on plastic design. */
  @Test
  void theMomentTendsToTheShapeFactor() {
    assertThat(Springback.momentRatio(1e6)).isCloseTo(1.69765, within(0.000005));
    assertThat(Springback.momentRatio(1e150)).isCloseTo(16 / (3 * Math.PI), within(1e-15));
  }

  /** Worked once with a numerical library: 0.9 mm on 3.0 mm, E 75 GPa, yield 124 MPa. */
  @Test
  void softSterlingOpensAsItWasComputedElsewhere() {
    assertThat(Springback.insideMm(0.9, 3.0, 75_000, 124).orElseThrow())
        .isCloseTo(3.0480, within(0.00005));
  }

  /** Fully plastic limit: 1/R₀ − 1/R_f = 32σ/(3πEd). */
  @Test
  void aSmallYieldStressLeavesTheFullyPlasticSpringback() {
    double growth = Springback.growth(1, 4, 100_000, 1).orElseThrow();
    double radius = 2.5;
    assertThat(1 / radius - 1 / (radius * growth))
        .isCloseTo(32.0 / (3 * Math.PI * 100_000), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "0.9, 3, 75000, 124", "0.9, 3, 75000, 425", "0.4, 20, 75000, 425", "1.2, 1, 112000, 134",
    "0.5, 60, 110000, 100", "0.3, 25, 79000, 30", "2, 500, 117000, 85", "0.8, 30, 95000, 600",
  })
  void theMomentIsThatOfQuadratureOverTheSection(
      double wire, double former, double modulus, double yield) {
    double curvature = 2 / (former + wire);
    double moment = momentByQuadrature(wire / 2, curvature, modulus, yield);
    double left = curvature - moment / (modulus * Math.PI * Math.pow(wire, 4) / 64);
    double inside = 2 / left - wire;
    assertThat(Springback.insideMm(wire, former, modulus, yield).orElseThrow())
        .isCloseTo(inside, within(1e-7 * inside));
  }

  /** M = 2∫₀^r σ(y)·y·2√(r² − y²) dy with y = r·sin φ, cut where yielding begins. */
  private static double momentByQuadrature(
      double radius, double curvature, double modulus, double yield) {
    UnivariateFunction integrand =
        phi -> {
          double y = radius * Math.sin(phi);
          double stress = Math.min(modulus * curvature * y, yield);
          double chord = 2 * radius * Math.cos(phi);
          return 2 * stress * y * chord * radius * Math.cos(phi);
        };
    double edge = Math.asin(Math.min(1, yield / (modulus * curvature * radius)));
    var integrator = new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-13);
    return integrator.integrate(1_000_000, integrand, 0, edge)
        + integrator.integrate(1_000_000, integrand, edge, Math.PI / 2);
  }
}
