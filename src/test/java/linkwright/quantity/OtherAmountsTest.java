package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OtherAmountsTest {
  @Nested
  class AMass {
    @ParameterizedTest
    @CsvSource({
      "9.4 g, 9.4",
      "'9,4 g', 9.4",
      "9 dwt, 13.99656456",
      "1 ozt, 31.1034768",
      "1 troy oz, 31.1034768",
      "1 oz av, 28.349523125",
      "0 g, 0",
    })
    void isReadWithItsUnit(String typed, double grams) {
      assertThat(Mass.read(typed).orThrow().grams()).isCloseTo(grams, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "9.4 | 9.4 what? Write a unit, as in 9.4 g.",
          "9 dwtt | “dwtt” is not a unit of weight. Did you mean 9 dwt?",
          "19 cm | “cm” is a unit of length, not a unit of weight. Write it like this: 9.4 g.",
          "1.5 oz | “1.5 oz” can be read in two ways: write 1.5 ozt for 46.7 g as troy ounces, by"
              + " which precious metal is sold, or write 1.5 oz av for 42.5 g as common ounces.",
          "-1 g | “-1 g” is below nothing. A weight can't be negative: leave the minus out.",
          "1e9 g | “1e9 g” is more than any bench holds. Check the number.",
        })
    void isRefusedWithASentence(String typed, String sentence) {
      assertThat(Mass.read(typed)).isEqualTo(Read.bad(sentence));
    }
  }

  @Nested
  class AShare {
    @ParameterizedTest
    @ValueSource(strings = {"90 %", "90%", "0.9", "0,9", "9/10", "90 percent"})
    void isTheSameAsPercentAndAsNumber(String typed) {
      assertThat(Share.read(typed).orThrow().value()).isCloseTo(0.9, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"90", "101 %", "-5 %", "0.9 mm", "NaN", "", "1e999"})
    void isRefusedOutsideTheWhole(String typed) {
      assertThat(Share.read(typed).isGood()).isFalse();
    }

    @Test
    void mayBeMoreThanTheWholeWhereThatMakesSense() {
      assertThat(Share.readAny("150 %").orThrow().value()).isEqualTo(1.5);
      assertThat(Share.readAny("-1 %").isGood()).isFalse();
    }

    @Test
    void ofNothingOrOfAllIsOne() {
      assertThat(Share.read("0 %").orThrow().value()).isZero();
      assertThat(Share.read("100 %").orThrow().value()).isEqualTo(1);
    }
  }

  @Nested
  class ASpan {
    @ParameterizedTest
    @CsvSource({
      "45 s, 45",
      "8 min, 480",
      "1 h 30 min, 5400",
      "1h30min, 5400",
      "1.5 h, 5400",
      "'1,5 h', 5400",
      "1 1/2 h, 5400",
      "90 minutes, 5400",
      "0 s, 0",
      "1 h 2 min 3 s, 3723",
    })
    void isReadInParts(String typed, long seconds) {
      assertThat(Span.read(typed)).isEqualTo(Read.good(new Span(seconds)));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "8 | 8 what? Write a unit, as in 8 s.",
          "1 h 30 | 30 what? Write a unit, as in 30 s.",
          "8 mim | “mim” is not a unit of time. Did you mean 8 min?",
          "soon | “soon” does not begin with a number. Write it like this: 8 min or 1 h 30 min.",
          "-8 min | “-8 min” is below nothing. A time can't be negative: leave the minus out.",
        })
    void isRefusedWithASentence(String typed, String sentence) {
      assertThat(Span.read(typed)).isEqualTo(Read.bad(sentence));
    }

    @Test
    void isWrittenAsItIsRead() {
      for (long seconds : new long[] {0, 1, 59, 60, 61, 3599, 3600, 3660, 3661, 360_000}) {
        assertThat(Span.read(new Span(seconds).text())).isEqualTo(Read.good(new Span(seconds)));
      }
      assertThat(new Span(5400).text()).isEqualTo("1 h 30 min");
    }
  }

  @Nested
  class AnAngle {
    @ParameterizedTest
    @ValueSource(strings = {"300", "300°", "300 deg", "300 degrees"})
    void isReadInDegrees(String typed) {
      assertThat(Angle.read(typed).orThrow().degrees()).isCloseTo(300, within(1e-9));
    }

    @Test
    void mayBeNegative() {
      assertThat(Angle.read("−12.5°").orThrow().degrees()).isCloseTo(-12.5, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"300 rad", "1e6", "left", "NaN"})
    void isRefusedOtherwise(String typed) {
      assertThat(Angle.read(typed).isGood()).isFalse();
    }
  }

  @Test
  void amountsThatAreNoneAreProgrammersErrors() {
    for (double none : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new Length(none)).hasMessageContaining("mm");
      assertThatThrownBy(() -> new Mass(none)).hasMessageContaining("grams");
      assertThatThrownBy(() -> new Share(none)).hasMessageContaining("value");
    }
    assertThatThrownBy(() -> new Angle(Double.NaN)).hasMessageContaining("radians");
    assertThatThrownBy(() -> new Span(-1)).hasMessageContaining("seconds");
  }
}
