package linkwright.quantity;

import static linkwright.quantity.UnitStyle.INCH;
import static linkwright.quantity.UnitStyle.METRIC;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader in millimetres and a reader in inches are told of the same thing. */
class TwoUnitStylesTest {
  // 1 lbf = 4.448222 N: NIST Handbook 44 (2023), Appendix C, units of force.
  @ParameterizedTest
  @CsvSource({
    "0, 0 N, 0 lbf",
    "0.2, below 1 N, below 0.1 lbf",
    "0.9, below 1 N, 0.2 lbf",
    "1, 1 N, 0.2 lbf",
    "44.482, 44 N, 10 lbf",
    "40, 40 N, 9 lbf",
    "42, 42 N, 9.4 lbf",
    "106, 106 N, 24 lbf",
  })
  void a_pull(double newtons, String metric, String inch) {
    assertThat(METRIC.pull(newtons)).isEqualTo(metric);
    assertThat(INCH.pull(newtons)).isEqualTo(inch);
  }

  // 1 lbf/in² = 6894.757 Pa: NIST Handbook 44 (2023), Appendix C, units of pressure.
  @ParameterizedTest
  @CsvSource({"0, 0 MPa, 0 ksi", "68.94757, 69 MPa, 10 ksi", "144.79, 145 MPa, 21 ksi"})
  void a_stress(double mpa, String metric, String inch) {
    assertThat(METRIC.stress(mpa)).isEqualTo(metric);
    assertThat(INCH.stress(mpa)).isEqualTo(inch);
  }

  @Test
  void a_stress_with_its_doubt() {
    assertThat(METRIC.stress(206.8, 13.8)).isEqualTo("207 ± 14 MPa");
    assertThat(INCH.stress(206.84271, 13.789514)).isEqualTo("30 ± 2 ksi");
  }

  @Test
  void a_length_as_it_stands_in_a_field() {
    assertThat(METRIC.typed(38.127)).isEqualTo("38.13 mm");
    assertThat(INCH.typed(38.1)).isEqualTo("1.5 in");
    assertThat(INCH.typed(1)).isEqualTo("0.0394 in");
  }

  @Test
  void examples_are_as_one_says_them() {
    assertThat(METRIC.wireExample(0.9)).isEqualTo("0.9 mm");
    assertThat(INCH.wireExample(0.9)).isEqualTo("19 AWG");
    assertThat(METRIC.lengthExample(14.25)).isEqualTo("14.25 mm");
    assertThat(INCH.lengthExample(14)).isEqualTo("0.55 in");
    assertThat(INCH.lengthExample(450)).isEqualTo("18 in");
    assertThat(INCH.lengthExample(2)).isEqualTo("0.079 in");
  }

  @Test
  void the_unit_of_what_was_typed_bare() {
    assertThat(METRIC.lengthUnit()).isEqualTo("mm");
    assertThat(INCH.lengthUnit()).isEqualTo("in");
    assertThat(METRIC.gaugeOrLengthUnit()).isEqualTo("mm");
    assertThat(INCH.gaugeOrLengthUnit()).isEqualTo("AWG");
    assertThat(METRIC.massUnit()).isEqualTo("g");
    assertThat(INCH.massUnit()).isEqualTo("dwt");
  }

  // Particle Data Group's rounding (from memory): 17 mm leaves whole numbers, which are
  // 0.67 in and leave one decimal; 0.6 mm leaves one, 0.024 in three.
  @ParameterizedTest
  @CsvSource({
    "456.7, 17, 457 mm, 18.0 in",
    "456.7, 0.6, 456.7 mm, 17.980 in",
    "456.7, 0, 456.7 mm, 17.98 in",
    "14.1, 1, 14.1 mm, 0.56 in"
  })
  void a_forecast_by_its_doubt(double mm, double doubt, String metric, String inch) {
    assertThat(METRIC.roundedBy(mm, doubt)).isEqualTo(metric);
    assertThat(INCH.roundedBy(mm, doubt)).isEqualTo(inch);
  }

  @Test
  void a_forecast_over_a_metre_is_rounded_in_metres() {
    assertThat(METRIC.roundedBy(1234.5, 20)).isEqualTo("1.235 m");
  }
}
