package linkwright.quantity;

import static linkwright.quantity.UnitStyle.INCH;
import static linkwright.quantity.UnitStyle.METRIC;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitStyleTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0 mm, 0 in",
    "14.1, 14.1 mm, 0.555 in",
    "14.14, 14.1 mm, 0.557 in",
    "3.048, 3.05 mm, 0.12 in",
    "100, 100 mm, 3.937 in",
    "457.2, 457.2 mm, 18 in",
    "1016, 1.016 m, 40 in",
    "-0.42, −0.42 mm, −0.017 in",
    "0.001, 0 mm, 0 in",
    "-0.0001, 0 mm, 0 in",
    "999.97, 1000 mm, 39.37 in",
  })
  void lengths(double mm, String metric, String inch) {
    assertThat(METRIC.length(mm)).isEqualTo(metric);
    assertThat(INCH.length(mm)).isEqualTo(inch);
  }

  @ParameterizedTest
  @CsvSource({
    "0.912, 0.912 mm, 19 AWG (0.036 in)",
    "0.9, 0.9 mm, 0.035 in (near 19 AWG)",
    "1.024, 1.024 mm, 18 AWG (0.04 in)",
    "0.86, 0.86 mm, 0.034 in",
    "0.255, 0.255 mm, 30 AWG (0.01 in)",
    "8.252, 8.252 mm, 1/0 AWG (0.325 in)",
    "50, 50 mm, 1.969 in",
  })
  void wires(double mm, String metric, String inch) {
    assertThat(METRIC.wire(mm)).isEqualTo(metric);
    assertThat(INCH.wire(mm)).isEqualTo(inch);
  }

  @ParameterizedTest
  @CsvSource({
    "9.4, 9.4 g, 6.04 dwt",
    "0.0123, 0.012 g, 0.008 dwt",
    "123.46, 123.5 g, 79.39 dwt",
    "0, 0 g, 0 dwt",
  })
  void masses(double grams, String metric, String inch) {
    assertThat(METRIC.mass(grams)).isEqualTo(metric);
    assertThat(INCH.mass(grams)).isEqualTo(inch);
  }

  @Test
  void whatIsWrittenIsReadBackAsNearAsItIsWritten() {
    long seed = 20_261_125;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double mm = 1 + 3000 * random.nextDouble();
      for (UnitStyle style : UnitStyle.values()) {
        String text = style.length(mm);
        assertThat(Length.read(text).orThrow().mm())
            .as("seed %d, %s", seed, text)
            .isCloseTo(mm, within(mm < 1000 ? 0.13 : 1.3));
        String mass = style.mass(mm / 10);
        assertThat(Mass.read(mass).orThrow().grams())
            .as("seed %d, %s", seed, mass)
            .isCloseTo(mm / 10, within(0.08));
      }
    }
  }

  @Test
  void aValueThatIsNoNumberIsAProgrammersError() {
    for (UnitStyle style : UnitStyle.values()) {
      assertThatThrownBy(() -> style.length(Double.NaN)).hasMessageContaining("finite");
      assertThatThrownBy(() -> style.mass(Double.POSITIVE_INFINITY)).hasMessageContaining("finite");
    }
  }

  /** 70 MPa over 6.894757 MPa a ksi (NIST SP 811, Appendix B.8). */
  @Test
  void stress_is_told_in_the_users_unit() {
    assertThat(UnitStyle.METRIC.stress(70)).isEqualTo("70 MPa");
    assertThat(UnitStyle.INCH.stress(70)).isEqualTo("10.2 ksi");
  }
}
