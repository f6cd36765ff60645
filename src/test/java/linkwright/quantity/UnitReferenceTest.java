package linkwright.quantity;

import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.SECOND;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * Our factors against indriya, with each unit built there from its definition. Source of the
 * definitions: NIST Handbook 44, Appendix C (inch 25.4 mm; grain 64.79891 mg; pennyweight 24, ounce
 * troy 480, pound 7000 grains; ounce a sixteenth of a pound; carat 200 mg).
 */
class UnitReferenceTest {
  private static final Unit<javax.measure.quantity.Mass> GRAIN =
      MILLI(GRAM).multiply(6_479_891).divide(100_000);
  private static final Unit<javax.measure.quantity.Length> INCH =
      METRE.multiply(254).divide(10_000);

  @ParameterizedTest
  @CsvSource({"1, 1", "3, 2", "3, 8", "16, 1", "555, 1000", "18, 1"})
  void inches(int numerator, int denominator) {
    double mm = in(MILLI(METRE), Quantities.getQuantity(numerator, INCH.divide(denominator)));
    String fraction = numerator + "/" + denominator + " in";
    assertThat(Length.read(fraction).orThrow().mm()).isCloseTo(mm, within(mm * 1e-14));
  }

  @Test
  void feetAndMetricLengths() {
    assertThat(Length.read("7 ft").orThrow().mm())
        .isCloseTo(in(MILLI(METRE), Quantities.getQuantity(84, INCH)), within(1e-9));
    assertThat(Length.read("7 thou").orThrow().mm())
        .isCloseTo(in(MILLI(METRE), Quantities.getQuantity(7, INCH.divide(1000))), within(1e-12));
    assertThat(Length.read("7 m").orThrow().mm())
        .isEqualTo(in(MILLI(METRE), Quantities.getQuantity(7, METRE)));
    assertThat(Length.read("7 cm").orThrow().mm())
        .isEqualTo(in(MILLI(METRE), Quantities.getQuantity(7, METRE.divide(100))));
  }

  @ParameterizedTest
  @CsvSource({"gr, 1, 1", "dwt, 24, 1", "ozt, 480, 1", "oz av, 7000, 16"})
  void troyAndAvoirdupois(String unit, int grains, int divisor) {
    double grams = in(GRAM, Quantities.getQuantity(9 * grains, GRAIN.divide(divisor)));
    assertThat(Mass.read("9 " + unit).orThrow().grams()).isCloseTo(grams, within(grams * 1e-14));
  }

  @Test
  void metricMasses() {
    assertThat(Mass.read("9 ct").orThrow().grams())
        .isCloseTo(in(GRAM, Quantities.getQuantity(1800, MILLI(GRAM))), within(1e-14));
    assertThat(Mass.read("9 mg").orThrow().grams())
        .isCloseTo(in(GRAM, Quantities.getQuantity(9, MILLI(GRAM))), within(1e-16));
    assertThat(Mass.read("9 kg").orThrow().grams())
        .isEqualTo(in(GRAM, Quantities.getQuantity(9, Units.KILOGRAM)));
  }

  @Test
  void angles() {
    double radians =
        in(Units.RADIAN, Quantities.getQuantity(300, Units.RADIAN.multiply(Math.PI).divide(180)));
    assertThat(Angle.read("300°").orThrow().radians()).isCloseTo(radians, within(1e-14));
  }

  @Test
  void times() {
    assertThat(Span.read("1 h 30 min").orThrow().seconds())
        .isEqualTo((long) in(SECOND, Quantities.getQuantity(90, Units.MINUTE)));
  }

  private static <Q extends Quantity<Q>> double in(Unit<Q> unit, Quantity<Q> quantity) {
    return quantity.to(unit).getValue().doubleValue();
  }
}
