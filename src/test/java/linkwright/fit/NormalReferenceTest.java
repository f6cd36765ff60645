package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The normal tail against the error function of an outside library. */
class NormalReferenceTest {
  @ParameterizedTest
  @ValueSource(doubles = {-30, -12, -6, -3.0001, -2.9999, -1, -0.1, 0, 0.3, 1, 2.9999, 3.0001, 7})
  void theLowerTailIsTheLibrarys(double u) {
    double tail = Erf.erfc(-u / Math.sqrt(2)) / 2;
    if (tail > 0) {
      assertThat(NormalTail.logLowerTail(u))
          .isCloseTo(Math.log(tail), within(1e-10 * Math.max(1, Math.abs(Math.log(tail)))));
      assertThat(NormalTail.hazard(u))
          .isCloseTo(
              new NormalDistribution().density(u) / tail, within(1e-9 * Math.max(1, Math.abs(u))));
    }
  }

  /** Far out φ/Φ is −u(1 + 1/u² − …), and no number is lost. */
  @Test
  void theHazardStaysANumberFarOut() {
    assertThat(NormalTail.hazard(-1e6)).isCloseTo(1e6, within(1e-5));
    assertThat(NormalTail.hazard(60)).isZero();
    assertThat(NormalTail.logLowerTail(-1e6)).isLessThan(-4.9e11);
    assertThat(NormalTail.logLowerTail(60)).isZero();
  }
}
