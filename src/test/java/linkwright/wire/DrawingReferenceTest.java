package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import linkwright.quantity.Gauge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawingReferenceTest {
  /** A wire maker's worked example: 1 m of 5.5 mm rod. */
  @ParameterizedTest
  @CsvSource({"1, 30.25, 0.005", "0.25, 484, 0.5"})
  void aMetreOfRodBecomesAsManyMetresAsTheWireMakerSays(
      double toMm, double metres, double halfOfLastDigit) {
    assertThat(new WireDrawing(5.5, toMm, 1000).lengthMm() / 1000)
        .isCloseTo(metres, within(halfOfLastDigit));
  }

  /** Computed by hand from d₀²/d₁². */
  @ParameterizedTest
  @CsvSource({
    "2.0, 1.0, 75.00, 4.00000",
    "1.2, 0.9, 43.75, 1.77778",
    "1.0, 0.9, 19.00, 1.23457",
  })
  void reductionAndLengthGoTogether(double from, double to, double percent, double times) {
    WireDrawing drawing = new WireDrawing(from, to, 1000);
    assertThat(100 * drawing.reduction()).isCloseTo(percent, within(0.005));
    assertThat(drawing.lengthMm() / 1000).isCloseTo(times, within(0.000005));
  }

  /** Computed from the ratio of the gauge, 92^(1/39) a number (ASTM B258). */
  @ParameterizedTest
  @CsvSource({"1, 20.70", "2, 37.11", "4, 60.45"})
  void stepsOfTheAmericanGaugeTakeOffTheirShare(int numbers, double percent) {
    for (int awg = 8; awg + numbers <= 30; awg++) {
      double share = new WireDrawing(Gauge.awgMm(awg), Gauge.awgMm(awg + numbers), 1).reduction();
      assertThat(100 * share).isCloseTo(percent, within(0.005));
    }
  }

  @Test
  void wireThatIsNotDrawnStaysAsItIs() {
    assertThat(new WireDrawing(1, 1, 500).lengthMm()).isEqualTo(500);
    assertThat(new WireDrawing(1, 1, 500).reduction()).isZero();
  }
}
