package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountTest {
  @ParameterizedTest
  @CsvSource({"0, 0", "27, 27", "+3, 3", "1000000, 1000000", "'  8 ', 8"})
  void isReadInDigits(String typed, int number) {
    assertThat(Count.read(typed)).isEqualTo(Read.good(number));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.5 | “2.5” is not a whole number. Write it in digits, as in 27.",
        "ten | “ten” is not a whole number. Write it in digits, as in 27.",
        "-1 | “-1” is below nothing: it is 0 or more.",
        "−1 | “−1” is below nothing: it is 0 or more.",
        "1000001 | “1000001” is more than a million pieces: check the number.",
        "99999999999999999999 | “99999999999999999999” is not a whole number. Write it in digits, as in 27.",
      })
  void elseASentenceSaysWhatWouldBeRight(String typed, String sentence) {
    assertThat(Count.read(typed)).isEqualTo(Read.bad(sentence));
  }

  @Test
  void mayHaveALeastAndAMost() {
    assertThat(Count.read("0", 1, 60)).isEqualTo(Read.bad("“0” is too few: it is 1 or more."));
    assertThat(Count.read("61", 1, 60)).isEqualTo(Read.bad("“61” is too many: it is 60 at most."));
  }
}
