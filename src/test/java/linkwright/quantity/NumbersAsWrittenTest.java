package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersAsWrittenTest {
  @Nested
  class ALengthIsRead {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "0.9 mm | 0.9",
          "0,9 mm | 0.9",
          "0.9mm | 0.9",
          ".9 mm | 0.9",
          "+0.9 MM | 0.9",
          "9 cm | 90",
          "1 m | 1000",
          "1.000 mm | 1",
          "0,925 mm | 0.925",
          "1000,5 mm | 1000.5",
          "1,25 mm | 1.25",
          "1,2500 mm | 1.25",
          "1 km | 1000000",
          "1 1/2 in | 38.1",
          "1-1/2 in | 38.1",
          "1½ in | 38.1",
          "½ in | 12.7",
          "3/8 in | 9.525",
          "3 / 8 in | 9.525",
          "16\" | 406.4",
          "16″ | 406.4",
          "16” | 406.4",
          "16'' | 406.4",
          "16’’ | 406.4",
          "16 inches | 406.4",
          "2 ft | 609.6",
          "1e2 mm | 100",
          "0 mm | 0",
        })
    void withItsUnit(String typed, double mm) {
      assertThat(Length.read(typed).orThrow().mm()).isCloseTo(mm, within(1e-9));
    }

    @Test
    void withAnyKindOfSpace() {
      assertThat(Length.read("\u00a00.9\u202fmm\t")).isEqualTo(Read.good(new Length(0.9)));
    }
  }

  @Nested
  class ALengthIsRefused {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "0.9 | 0.9 what? Write a unit, as in 0.9 mm.",
          "0.9 mn | “mn” is not a unit of length. Did you mean 0.9 mm?",
          "0,9 inhc | “inhc” is not a unit of length. Did you mean 0,9 in?",
          "0.9 furlong | “furlong” is not a unit of length. Write it like this: 0.9 mm.",
          "-3 mm | “-3 mm” is below nothing. A length can't be negative: leave the minus out.",
          "−3 mm | “−3 mm” is below nothing. A length can't be negative: leave the minus out.",
          "mm | “mm” does not begin with a number. Write it like this: 0.9 mm.",
          "NaN mm | “NaN mm” is not an amount. Write it like this: 0.9 mm.",
          "Infinity mm | “Infinity mm” is not an amount. Write it like this: 0.9 mm.",
          "-Infinity mm | “-Infinity mm” is not an amount. Write it like this: 0.9 mm.",
          "1e400 mm | “1e400 mm” is not a size that can be reckoned with. Write it like 0.9 mm.",
          "1/0 in | “1/0 in” is not a size that can be reckoned with. Write it like 0.9 mm.",
          "0/0 in | “0/0 in” is not a size that can be reckoned with. Write it like 0.9 mm.",
          "1e300 m | “1e300 m” is more than any bench holds. Check the number.",
          "1e-300 mm | “1e-300 mm” is too small to measure. Check the number.",
          "6' | A single ' may be read as feet or as inches. Write ft or in.",
        })
    void withASentenceThatSaysWhatWouldBeRight(String typed, String sentence) {
      assertThat(Length.read(typed)).isEqualTo(Read.bad(sentence));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"1,000.5 mm", "1.000,5 mm", "1 000 mm", "1'000 mm", "1’000 mm", "1,000,000 mm"})
    void withThousandsSeparators(String typed) {
      assertThat(Length.read(typed).problem().orElseThrow())
          .startsWith(
              "“" + typed + "” has more in it than one number. Write thousands without a gap");
    }

    /** With three digits after it a comma may part thousands as well as decimals. */
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "1,000 mm | 1000 mm or 1.0 mm",
          "12,345 mm | 12345 mm or 12.345 mm",
          "-1,000 mm | −1000 mm or −1.0 mm",
          "1,000 in | 1000 in or 1.0 in",
          "1,000 | 1000 or 1.0"
        })
    void whereACommaMayPartThousandsBothReadingsAreTold(String typed, String readings) {
      assertThat(Length.read(typed))
          .isEqualTo(Read.bad("“" + typed + "” can be read in two ways. Write " + readings + "."));
      assertThat(Length.readList(typed).isGood()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/2/3 in", "1 1/2.5 in", "1/ in"})
    void withAFractionThatIsNone(String typed) {
      assertThat(Length.read(typed).problem().orElseThrow()).contains("Write");
    }

    @Test
    void whenNothingIsWritten() {
      assertThat(Length.read("  "))
          .isEqualTo(Read.bad("Nothing is written here. Write it like this: 0.9 mm."));
    }

    @Test
    void withoutRepeatingAPageOfNonsense() {
      assertThat(Length.read("x".repeat(10_000)).problem().orElseThrow()).hasSizeLessThan(150);
    }

    @Test
    void whenItsNumberHasThousandsOfDigits() {
      assertThat(Length.read("9".repeat(5000) + " mm").isGood()).isFalse();
    }
  }

  @Nested
  class ASizeIsMoreThanNothing {
    @Test
    void soZeroIsTold() {
      assertThat(Length.readSize("0 mm"))
          .isEqualTo(Read.bad("“0 mm” is nothing. It has to be more than 0 mm."));
      assertThat(Length.readWire("0.0 in").isGood()).isFalse();
    }
  }

  @Nested
  class AListOfLengths {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "412 mm,96.5 mm",
          "412 mm, 96,5 mm",
          "412mm;96.5 mm",
          "41.2 cm , 0,0965 m",
        })
    void isSplitAfterAUnitAndNotBetweenDigits(String typed) {
      assertThat(Length.readList(typed).orThrow().stream().map(l -> Math.round(l.mm() * 1e6) / 1e6))
          .containsExactly(412.0, 96.5);
    }

    @Test
    void keepsADecimalCommaBetweenDigits() {
      assertThat(Length.readList("412,96 mm").orThrow()).containsExactly(new Length(412.96));
    }

    @Test
    void tellsEverythingThatIsWrongAtOnce() {
      assertThat(Length.readList("412, 96 mm, 3 mn").problem().orElseThrow())
          .contains("412 what?")
          .contains("Did you mean 3 mm?");
    }

    @Test
    void tellsACommaTooMany() {
      assertThat(Length.readList("412 mm,").problem().orElseThrow()).contains("Nothing is written");
    }

    @Test
    void mayHoldGaugesWhereWireIsMeant() {
      assertThat(Length.readWireList("18 AWG,1 mm").orThrow())
          .containsExactly(new Length(Gauge.awgMm(18)), new Length(1));
    }
  }
}
