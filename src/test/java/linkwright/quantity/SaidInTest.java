package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An amount comes out no finer than it was written, in two digits at least. An inch is 25.4 mm, a
 * foot 304.8 mm exactly, a pennyweight 1.55517384 g (NIST Handbook 44, Appendix C).
 */
class SaidInTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "38 mm|1.5 in",
        "1 mm|0.039 in",
        "0.3 mm|0.012 in",
        "42.9 mm|1.689 in",
        "19 cm|7.5 in",
        "20 g|12.9 dwt",
        "annealed 110 to 158 MPa|annealed 16 to 22.9 ksi",
        "3 m needed|9.8 ft needed",
        "at least 45 cm or 18 in, clasp included|at least 18 in, clasp included",
        "0.9 mm or 19 AWG|19 AWG",
        "20 ft (6 m) away|20 ft (6 m) away",
        "not “5 mm”, but 4 mm|not “5 mm”, but 0.16 in",
      })
  void an_amount_is_said_as_finely_as_it_was_written(String metric, String said) {
    assertThat(SaidIn.units(metric, UnitStyle.INCH)).isEqualTo(said);
    assertThat(SaidIn.units(metric, UnitStyle.METRIC)).isEqualTo(metric);
  }
}
