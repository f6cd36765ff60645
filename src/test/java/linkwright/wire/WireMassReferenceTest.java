package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import linkwright.quantity.Gauge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireMassReferenceTest {
  /** Exact: the avoirdupois pound. Source: NIST Handbook 44, Appendix C. */
  private static final double POUND_G = 453.59237;

  /**
   * Bare solid copper wire, lb per 1000 ft, at 8.89 g/cm³. Source: published copper wire tables.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 31.43, 0.005",
    "14, 12.43, 0.005",
    "18, 4.917, 0.0005",
    "22, 1.945, 0.0005",
  })
  void copperWireWeighsWhatTheTablesSay(int awg, double pounds, double halfOfLastDigit) {
    double area = WireSection.round(Gauge.awgMm(awg)).areaMm2();
    double grams = WireMass.grams(area, 1000 * 304.8, 8.89);
    assertThat(grams / POUND_G).isCloseTo(pounds, within(halfOfLastDigit));
  }

  @Test
  void lengthFromMassIsMassFromLengthTurnedRound() {
    double grams = WireMass.grams(0.636, 1234, 10.36);
    assertThat(WireMass.lengthMm(0.636, grams, 10.36)).isCloseTo(1234, within(1e-9));
    assertThat(WireMass.grams(0.636, 0, 10.36)).isZero();
    assertThat(WireMass.lengthMm(0.636, 0, 10.36)).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void whatIsNoAmountIsAProgrammersError(double none) {
    assertThatThrownBy(() -> WireMass.grams(none, 1, 1)).hasMessageContaining("areaMm2");
    assertThatThrownBy(() -> WireMass.grams(1, none, 1)).hasMessageContaining("lengthMm");
    assertThatThrownBy(() -> WireMass.grams(1, 1, none)).hasMessageContaining("densityGCm3");
    assertThatThrownBy(() -> WireMass.lengthMm(1, none, 1)).hasMessageContaining("grams");
  }

  @Test
  void whatOverflowsIsAProgrammersError() {
    assertThatThrownBy(() -> WireMass.grams(1e200, 1e200, 1)).hasMessageContaining("mass");
    assertThatThrownBy(() -> WireMass.lengthMm(1e-300, 1e300, 1)).hasMessageContaining("length");
  }
}
