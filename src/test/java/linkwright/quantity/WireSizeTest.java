package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireSizeTest {
  @ParameterizedTest
  @CsvSource({
    "19 AWG, 19",
    "19awg, 19",
    "AWG 19, 19",
    "#19 AWG, 19",
    "19 B&S, 19",
    "19 B & S, 19",
    "0 AWG, 0",
    "1/0 AWG, 0",
    "2/0 AWG, -1",
    "4/0 AWG, -3",
    "18.5 AWG, 18.5",
  })
  void americanGaugeIsTheFormulaUnrounded(String typed, double number) {
    assertThat(Length.readWire(typed)).isEqualTo(Read.good(new Length(Gauge.awgMm(number))));
  }

  /** B.S. 3737 and ASTM B258: 7/0 SWG is 0.500 in, 3/0 0.372 in; 4/0 AWG 0.4600 in. */
  @ParameterizedTest(name = "{0} is {1} in")
  @CsvSource({
    "0000000 SWG, 0.5",
    "000 SWG, 0.372",
    "00 SWG, 0.348",
    "SWG 0, 0.324",
    "0000 AWG, 0.46",
    "AWG 0000, 0.46",
    "0 AWG, 0.32486"
  })
  void a_gauge_written_in_noughts_is_so_many_above_one(String typed, double inches) {
    assertThat(Length.readWire(typed).orThrow().mm()).isCloseTo(inches * 25.4, within(3e-4));
  }

  @Test
  void britishGaugeIsTheList() {
    assertThat(Length.readWire("19 SWG").orThrow().mm()).isCloseTo(1.016, within(1e-12));
    assertThat(Length.readWire("7/0 SWG").orThrow().mm()).isCloseTo(12.7, within(1e-12));
    assertThat(Length.readWire("SWG 50").orThrow().mm()).isCloseTo(0.0254, within(1e-12));
  }

  @Test
  void whatIsThickerThanAnyWireIsRefusedWithWhatWasLikelyMeant() {
    assertThat(Length.readWire("1 km"))
        .isEqualTo(Read.bad("“1 km” is thicker than any wire is. Did you mean 1 mm?"));
    assertThat(Length.readWire("0,9 m").problem().orElseThrow()).endsWith("Did you mean 0.9 mm?");
    assertThat(Length.readWire("90 cm").problem().orElseThrow()).endsWith("Check the number.");
    assertThat(Length.readWire("12 mm").isGood()).as("a rod for the drawplate").isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"19 ga", "19 gauge", "19ga.", "gauge 19"})
  void aGaugeWithoutItsNameIsAskedFor(String typed) {
    assertThat(Length.readWire(typed))
        .isEqualTo(
            Read.bad(
                "19 of which gauge? Write 19 AWG (also called B&S, usual in America) or 19 SWG"
                    + " (British). 19 AWG is 0.912 mm, 19 SWG is 1.016 mm."));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "99 AWG",
        "5/0 AWG",
        "-1 AWG",
        "19.5 SWG",
        "51 SWG",
        "8/0 SWG",
        "-3 SWG",
        "1e9 SWG"
      })
  void aNumberOutsideTheGaugeIsTold(String typed) {
    assertThat(Length.readWire(typed).problem().orElseThrow()).contains("rite");
  }

  @Test
  void aMisspeltGaugeIsToldWithTheNearest() {
    assertThat(Length.readWire("19 agw"))
        .isEqualTo(Read.bad("“agw” is not a gauge. Did you mean 19 AWG?"));
    assertThat(Length.readWire("19 SWGG"))
        .isEqualTo(Read.bad("“swgg” is not a gauge. Did you mean 19 SWG?"));
  }

  @Test
  void aLengthServesToo() {
    assertThat(Length.readWire("0,9 mm")).isEqualTo(Read.good(new Length(0.9)));
    assertThat(Length.readWire("0.9")).isEqualTo(Read.bad("0.9 what? Write a unit, as in 0.9 mm."));
    assertThat(Length.readWire("19 g").isGood()).isFalse();
  }

  @Test
  void theNumberOfADiameterIsTheFormulaTurnedRound() {
    for (double n = -3; n <= 56; n += 0.25) {
      assertThat(Gauge.nearestAwg(Gauge.awgMm(n))).isCloseTo(n, within(1e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-3.01, 56.01, Double.NaN, Double.POSITIVE_INFINITY})
  void aNumberOutsideTheFormulaIsAProgrammersError(double number) {
    assertThatThrownBy(() -> Gauge.awgMm(number))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aDiameterThatIsNoneIsAProgrammersError(double diameterMm) {
    assertThatThrownBy(() -> Gauge.nearestAwg(diameterMm))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("diameterMm");
  }

  @Test
  void thereIsNoNoughtOfNoughtsAndNoughtsWithoutAGaugeAreAskedBackWithTheirOwnSizes() {
    assertThat(Length.readWire("0/0 AWG").isGood()).isFalse();
    assertThat(Length.readWire("0/0 SWG").isGood()).isFalse();
    // 00 AWG is 0.3648 in, 00 SWG 0.348 in, as in the tables above.
    assertThat(Length.readWire("00 gauge").problem().orElseThrow())
        .contains("00 AWG is 9.266 mm", "00 SWG is 8.839 mm");
  }
}
