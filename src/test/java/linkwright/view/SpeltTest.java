package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A degree has no like in ASCII: it is a word there, never a letter that joins the figure. */
class SpeltTest {
  @ParameterizedTest
  @CsvSource({"285°,285 deg", "12 ± 3°,12 +/- 3 deg", "961.8 °C,961.8 C", "1400 °F,1400 F"})
  void a_degree_is_spelt_in_ascii(String full, String ascii) {
    assertThat(Ascii.of(full)).isEqualTo(ascii);
  }

  @Test
  void unicode_keeps_it() {
    assertThat(Glyphs.FULL.spelt("285°")).isEqualTo("285°");
  }
}
