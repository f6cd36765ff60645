package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Temperatures in texts: F = C · 9/5 + 32 by definition; 450 °C is said as 840 °F in the trade. */
class DegreesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Fine silver melts from 961.8 °C.|Fine silver melts from 1763 °F.",
        "It flows at 715,5 °C.|It flows at 1320 °F.",
        "From -20 °C on.|From -4 °F on.",
        "At 600 to 650 °C.|At 1110 to 1200 °F.",
        "From 560 to 650 °C.|From 1040 to 1200 °F.",
        "788 and 891 °C|1450 and 1636 °F",
        "At 600.5–650 °C.|At 1113 to 1202 °F.",
        "600 °C to 650 °C.|1110 to 1200 °F.",
        "2 below 450 °C|2 below 840 °F",
        "Water boils at 100 °C.|Water boils at 212 °F.",
        "1110 °F (600 °C).|1110 °F (600 °C).",
        "600 °C (1110 °F).|600 °C (1110 °F)."
      })
  void standInFahrenheitForThoseWhoWorkInInches(String written, String said) {
    assertThat(Degrees.inUnits(written, UnitStyle.INCH)).isEqualTo(said);
    assertThat(Degrees.inUnits(written, UnitStyle.METRIC)).isEqualTo(written);
  }

  @Test
  void aHeatToAnnealAtIsNoFinerThanItsSignsShowIt() {
    // C22000: 800 to 1450 °F (Copper Development Association, from memory), held as 425 to 790 °C.
    assertThat(Degrees.heat(425, 790, UnitStyle.INCH)).isEqualTo("800 to 1450 °F");
    assertThat(Degrees.heat(425, 790, UnitStyle.METRIC)).isEqualTo("425 to 790 °C");
    assertThat(Degrees.heat(650, UnitStyle.INCH)).isEqualTo("1200 °F");
  }
}
