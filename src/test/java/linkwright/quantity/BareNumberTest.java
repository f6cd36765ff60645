package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BareNumberTest {
  @ParameterizedTest
  @ValueSource(strings = {"30", " 30 ", "0,9", "5/16", "1 1/2", "-3"})
  void a_number_alone_is_bare(String typed) {
    assertThat(BareNumber.is(typed)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "30 mm", "30mm", "mm", "30 %", "1.2.3"})
  void with_a_unit_or_without_a_number_it_is_not(String typed) {
    assertThat(BareNumber.is(typed)).isFalse();
  }

  @Test
  void a_whole_number_has_one_to_three_digits_and_does_not_begin_with_nothing() {
    assertThat(BareNumber.isWhole(" 20 ")).isTrue();
    assertThat(BareNumber.isWhole("999")).isTrue();
    assertThat(BareNumber.isWhole("0")).isFalse();
    assertThat(BareNumber.isWhole("1000")).isFalse();
    assertThat(BareNumber.isWhole("2.5")).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "30, 30 %",
    "' 30 ', 30 %",
    "0.3, 30 %",
    "0.125, 12.5 %",
    "1, 1 %",
    "0, 0 %",
    "30 %, 30 %",
    "some, some"
  })
  void a_share_below_one_is_a_part_and_any_other_is_of_a_hundred(String typed, String share) {
    assertThat(BareNumber.asShare(typed)).isEqualTo(share);
  }

  @Test
  void each_bare_number_of_a_list_gets_the_unit_and_keeps_its_name() {
    assertThat(BareNumber.complete("5, 3.2", "mm")).isEqualTo("5 mm, 3.2 mm");
    assertThat(BareNumber.complete("big=5,small = 3 mm", "mm")).isEqualTo("big=5 mm, small = 3 mm");
    assertThat(BareNumber.complete("5/16", "in")).isEqualTo("5/16 in");
  }

  @Test
  void a_list_without_bare_numbers_stays_as_it_was_typed() {
    assertThat(BareNumber.complete("5 mm,  3 mm", "in")).isEqualTo("5 mm,  3 mm");
  }
}
