package linkwright.routine;

import static linkwright.quantity.UnitStyle.INCH;
import static linkwright.quantity.UnitStyle.METRIC;
import static linkwright.routine.TradeWords.AMERICAN;
import static linkwright.routine.TradeWords.BRITISH;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WordingTest {
  private static String british(String text, Map<String, String> values) {
    return Wording.fill(text, values, METRIC, BRITISH);
  }

  @Test
  void aPlaceholderGivesItsValue() {
    assertThat(british("Cut a blank of {blank}.", Map.of("blank", "36 mm")))
        .isEqualTo("Cut a blank of 36 mm.");
  }

  @Test
  void aPlaceholderWithoutAValueReadsAsPlainWords() {
    assertThat(british("Cut a blank of {blank} over {former body}.", Map.of()))
        .isEqualTo("Cut a blank of the planned length over the planned size.");
    assertThat(british("No longer than {solder piece}.", Map.of("solder piece", " ")))
        .isEqualTo("No longer than the wire is thick.");
  }

  @Test
  void aNumberOfSomethingIsNoNumberOfOf() {
    assertThat(british("Cut {links} of them, {rings} rings, {links}.", Map.of()))
        .isEqualTo(
            "Cut the planned number of them, the planned number of rings, the planned number.");
  }

  @Test
  void noBraceIsEverLeftEvenIfTheTextIsBroken() {
    assertThat(british("Of {wier} and {wire", Map.of())).isEqualTo("Of the planned wier and wire");
  }

  @Test
  void aSentenceFromTheMetalGetsItsCapitalAndItsFullStop() {
    assertThat(british("Stop. {quench} Dry it.", Map.of("quench", "let the red fade, then quench")))
        .isEqualTo("Stop. Let the red fade, then quench. Dry it.");
  }

  @Test
  void aValueMayHoldADollarSignOrABackslash() {
    assertThat(british("{glow}", Map.of("glow", "a $1 \\ glow"))).isEqualTo("A $1 \\ glow");
  }

  @Nested
  class FixedLengths {
    @Test
    void readInMillimetres() {
      assertThat(british("A gap of {0.1 mm}, wire of {wire 0.9 mm}.", Map.of()))
          .isEqualTo("A gap of 0.1 mm, wire of 0.9 mm.");
    }

    @Test
    void readInInchesWithTheGaugeNumberOfAWire() {
      assertThat(Wording.fill("{25.4 mm} of {wire 0.912 mm} wire", Map.of(), INCH, BRITISH))
          .isEqualTo("1 in of 19 AWG (0.036 in) wire");
    }

    @Test
    void readAsARuleShowsThemWhereThatIsNearEnough() {
      assertThat(inch("{70 mm}, {15 mm}, {1.5 mm}")).isEqualTo("2 3/4 in, 9/16 in, 1/16 in");
    }

    @Test
    void readInDecimalsWhereNoSixteenthIsNear() {
      assertThat(inch("{1 mm}, {0.1 mm}")).isEqualTo("0.039 in, 0.004 in");
    }

    @Test
    void neverReadAsNothing() {
      assertThat(inch("Thickness to {0.01 mm}.")).isEqualTo("Thickness to 0.0004 in.");
    }

    private String inch(String text) {
      return Wording.fill(text, Map.of(), INCH, BRITISH);
    }
  }

  @Nested
  class Words {
    private String american(String text) {
      return Wording.fill(text, Map.of(), METRIC, AMERICAN);
    }

    @Test
    void becomeAmericanOneByOneAndManyByMany() {
      assertThat(american("Solder the joint. Joints and pallions on a former; lemel of 9 ct."))
          .isEqualTo("Solder the seam. Seams and chips on a mandrel; filings of 9 k.");
      assertThat(american("A trace or belcher chain with a bolt ring and a hallmark."))
          .isEqualTo("A cable or rolo chain with a spring ring and a quality mark.");
      assertThat(american("Sulphur vapour, centred fibres, labelled and high-carat."))
          .isEqualTo("Sulfur vapor, centered fibers, labeled and high-karat.");
    }

    @Test
    void areReplacedOnlyWhole() {
      assertThat(american("A jointed, formerly traced act."))
          .isEqualTo("A jointed, formerly traced act.");
    }

    @Test
    void staysBritishForTheBritish() {
      assertThat(british("The joint on the former.", Map.of()))
          .isEqualTo("The joint on the former.");
    }

    @Test
    void leaveTheNamesInBracesAlone() {
      assertThat(
              Wording.fill("Over {former body}.", Map.of("former body", "3 mm"), METRIC, AMERICAN))
          .isEqualTo("Over 3 mm.");
    }
  }
}
