package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipseReferenceTest {
  /** Computed with a general-purpose numerical library's elliptic integrals; digits as printed. */
  @ParameterizedTest(name = "half axes {0} and {1}: {2}")
  @CsvSource({"2, 1, 9.68844822055", "3, 2, 15.8654395893", "4, 3, 22.1034921607"})
  void agreesWithComputedPerimeters(double a, double b, double printed) {
    assertThat(Ellipse.perimeter(a, b)).isCloseTo(printed, within(1e-10));
    assertThat(Ellipse.perimeter(b, a)).isCloseTo(printed, within(1e-10));
  }

  /**
   * P = 4aE(m), m = 1 − (b/a)², with Hipparchus' complete integral of the second kind. (Its first
   * kind is not used: it was seen to be wrong for negative m.)
   */
  @Test
  void agreesWithHipparchusFromAlmostFlatToRound() {
    for (double b = 0.02; b <= 1; b += 0.02) {
      double reference = 4 * 3.7 * LegendreEllipticIntegral.bigE(1 - b * b);
      assertThat(Ellipse.perimeter(3.7, 3.7 * b))
          .isCloseTo(reference, Percentage.withPercentage(1e-10));
    }
  }

  @Test
  void aCircleAndAFlatEllipseAreExact() {
    assertThat(Ellipse.perimeter(1, 1)).isCloseTo(2 * Math.PI, within(1e-15));
    assertThat(Ellipse.perimeter(1, 1e-9)).isCloseTo(4, within(1e-9));
  }

  @Test
  void theLongerHalfIsThePerimetersInverse() {
    for (double b = 0.05; b <= 1; b += 0.05) {
      double longer = Ellipse.longerHalf(2 * Math.PI, b);
      assertThat(Ellipse.perimeter(longer, b)).isCloseTo(2 * Math.PI, within(1e-12));
    }
  }

  @Test
  void aHalfAxisThatIsNotAboveZeroIsTheProgrammersFault() {
    assertThatThrownBy(() -> Ellipse.perimeter(1, 0)).hasMessageContaining("half axes");
    assertThatThrownBy(() -> Ellipse.perimeter(Double.NaN, 1)).hasMessageContaining("half axes");
  }
}
