package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import linkwright.quantity.Gauge;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireSectionTest {
  @Nested
  class ThePlasticModulus {
    @Test
    void ofRoundAndFlatWireIsThatOfTheHandbook() {
      // From memory: d³/6, s³/4, wt²/4; the half disc 0.354 r³, halved 0.404 r above its flat side.
      assertThat(WireSection.round(2).plasticMm3()).isCloseTo(8 / 6.0, within(1e-12));
      assertThat(new WireSection(Section.SQUARE, 2, 2).plasticMm3()).isEqualTo(2);
      assertThat(WireSection.strip(2, 0.5).plasticMm3()).isCloseTo(0.125, within(1e-12));
      WireSection half = new WireSection(Section.HALF_ROUND, 2, 1);
      assertThat(half.plasticMm3()).isCloseTo(0.354, within(0.0005));
      assertThat(half.middleMm()).isCloseTo(0.404, within(0.0005));
    }

    @Test
    void ofAWireThatNamesItsSectionIsReadWithoutAskingForTheSection() {
      assertThat(WireSection.read(Section.ROUND, "half-round 2 mm x 1 mm").orThrow())
          .isEqualTo(new WireSection(Section.HALF_ROUND, 2, 1));
    }

    @Test
    void ofStripAndHalfRoundIsAsThickAsAnyWireMayBe() {
      for (String typed : new String[] {"strip 80 mm x 31 cm", "half-round 200 mm x 50 mm"}) {
        assertThat(((Read.Bad<WireSection>) WireSection.read(typed)).sentence())
            .as(typed)
            .contains("is thicker than any wire is");
      }
      assertThat(WireSection.read("strip 80 mm x 3 mm").isGood()).isTrue();
    }

    @Test
    void makesStripOpenAtItsOwnLoad() {
      // Two hinges' moment by hand: 124 MPa x 0.125 mm³ over half of 3 + 0.5 mm.
      assertThat(Strength.buttedN(WireSection.strip(2, 0.5), 3, 124))
          .isCloseTo(124 * 0.125 / 1.75, within(1e-9));
      assertThat(Strength.buttedN(WireSection.round(0.9), 3, 124))
          .isCloseTo(Strength.buttedN(0.9, 3, 124), within(1e-9));
    }
  }

  @Nested
  class TheArea {
    @Test
    void ofEachSectionIsThatOfItsShape() {
      assertThat(WireSection.round(2).areaMm2()).isCloseTo(Math.PI, within(1e-12));
      assertThat(new WireSection(Section.SQUARE, 2, 2).areaMm2()).isEqualTo(4);
      assertThat(new WireSection(Section.HALF_ROUND, 2, 1).areaMm2())
          .isCloseTo(Math.PI / 2, within(1e-12));
      assertThat(WireSection.strip(3, 0.5).areaMm2()).isEqualTo(1.5);
    }

    @Test
    void ofTwoHalfRoundsIsThatOfTheRound() {
      double half = new WireSection(Section.HALF_ROUND, 1.3, 0).areaMm2();
      assertThat(2 * half).isCloseTo(WireSection.round(1.3).areaMm2(), within(1e-12));
    }

    @Test
    void thatOverflowsIsAProgrammersError() {
      assertThatThrownBy(() -> WireSection.round(1e200).areaMm2())
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("areaMm2");
    }
  }

  @Nested
  class TheSizes {
    @ParameterizedTest
    @ValueSource(doubles = {0, -0.9, Double.NaN, Double.POSITIVE_INFINITY})
    void thatAreNoneAreAProgrammersError(double size) {
      for (Section section : Section.values()) {
        assertThatThrownBy(() -> new WireSection(section, size, 1)).hasMessageContaining("widthMm");
      }
      assertThatThrownBy(() -> WireSection.strip(1, size)).hasMessageContaining("thicknessMm");
    }

    @Test
    void ofRoundAndSquareWireAreTheSameBothWays() {
      assertThat(new WireSection(Section.ROUND, 0.9, 0)).isEqualTo(WireSection.round(0.9));
    }
  }

  @Nested
  class Reading {
    @Test
    void takesAGaugeOrASize() {
      assertThat(WireSection.read(Section.ROUND, "19 AWG"))
          .isEqualTo(Read.good(WireSection.round(Gauge.awgMm(19))));
      assertThat(WireSection.read(Section.SQUARE, "0,9 mm").orThrow().areaMm2())
          .isCloseTo(0.81, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "3 mm x 0.5 mm",
          "3 x 0.5 mm",
          "3 mm × 0,5 mm",
          "3mm X 0.5mm",
          "0.3 cm by 0.5 mm"
        })
    void takesAStripByItsTwoSides(String typed) {
      WireSection strip = WireSection.read(Section.STRIP, typed).orThrow();
      assertThat(strip.widthMm()).isCloseTo(3, within(1e-12));
      assertThat(strip.thicknessMm()).isCloseTo(0.5, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "3 mm | “3 mm” is not a strip. Write its width and its thickness, as in 3 mm x 1 mm.",
          "3 x 0.5 | 3 what? Write a unit, as in 3 mm. 0.5 what? Write a unit, as in 0.5 mm.",
          "3 mm x 0.5 | 0.5 what? Write a unit, as in 0.5 mm.",
          "0 mm x 1 mm | “0 mm” is nothing. It has to be more than 0 mm.",
        })
    void refusesAStripWithASentence(String typed, String sentence) {
      assertThat(WireSection.read(Section.STRIP, typed)).isEqualTo(Read.bad(sentence));
    }

    @Test
    void knowsTheSectionsByName() {
      for (Section section : Section.values()) {
        assertThat(Section.read(section.word())).isEqualTo(Read.good(section));
      }
      assertThat(Section.read("Half Round")).isEqualTo(Read.good(Section.HALF_ROUND));
      assertThat(Section.read("rond"))
          .isEqualTo(
              Read.bad(
                  "“rond” is not a section. Did you mean round?"
                      + " Write round, square, half-round or strip."));
    }
  }

  @Nested
  class WrittenWithItsSection {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "half-round 2 mm x 1 mm | HALF_ROUND | 2 | 1",
          "D 2 mm | HALF_ROUND | 2 | 1",
          "2 mm half round | HALF_ROUND | 2 | 1",
          "square 1.5 mm | SQUARE | 1.5 | 1.5",
          "strip 3 x 1 mm | STRIP | 3 | 1",
          "3 x 1 mm strip | STRIP | 3 | 1",
          "round 0.9 mm | ROUND | 0.9 | 0.9",
          "0.9 mm | ROUND | 0.9 | 0.9",
        })
    void isReadByItsWordBeforeOrAfter(
        String typed, Section section, double width, double thickness) {
      WireSection wire = WireSection.read(typed).orThrow();
      assertThat(wire.isLike(new WireSection(section, width, thickness))).as("%s", wire).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"0.9 mm", "square 1.5 mm", "half-round 2 mm x 1 mm", "strip 3 mm x 1 mm"})
    void isSaidAsItIsReadBack(String typed) {
      assertThat(WireSection.read(typed).orThrow().said(UnitStyle.METRIC)).isEqualTo(typed);
    }

    @Test
    void isNotTakenAsHalfRoundWhereItIsThickerThanHalfItsWidth() {
      assertThat(WireSection.read("half-round 2 mm x 1.004 mm").orThrow().thicknessMm())
          .isEqualTo(1);
      assertThat(WireSection.read("half-round 1 mm x 2 mm"))
          .isEqualTo(
              Read.bad(
                  "Half-round wire is at most half as thick as it is wide: width first, then"
                      + " thickness, as in half-round 2 mm x 1 mm."));
      assertThat(WireSection.read(Section.HALF_ROUND, "2 mm x 1.01 mm").isGood()).isFalse();
    }

    /** The same was told of each side. */
    @Test
    void tellsWhatIsWrongWithBothSidesOnce() {
      String told = WireSection.read(Section.HALF_ROUND, "12 gu x 16 gu").problem().orElseThrow();
      assertThat(told.split("“gu” is not a", -1)).as(told).hasSize(2);
    }

    /** Sizes of the gauges: ASTM B258, and the Imperial Standard Wire Gauge, BS 3737. */
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "half-round 12 AWG x 18 AWG | HALF_ROUND | 2.0525 | 1.0237",
          "half-round 12 x 18 AWG | HALF_ROUND | 2.0525 | 1.0237",
          "strip 12 AWG x 16 AWG | STRIP | 2.0525 | 1.2908",
          "strip 12 SWG by 16 SWG | STRIP | 2.642 | 1.626",
          "strip 3 mm x 18 AWG | STRIP | 3 | 1.0237",
          "D 10 AWG x 1 mm | HALF_ROUND | 2.5882 | 1",
        })
    void isReadByGauge(String typed, Section section, double width, double thickness) {
      WireSection wire = WireSection.read(typed).orThrow();
      assertThat(wire.section()).isEqualTo(section);
      assertThat(wire.widthMm()).isCloseTo(width, within(0.0005));
      assertThat(wire.thicknessMm()).isCloseTo(thickness, within(0.0005));
    }

    @Test
    void isAskedOfWhichGaugeAsItIsOfRoundWire() {
      assertThat(WireSection.read("half-round 12 ga x 18 ga").problem().orElseThrow())
          .contains("12 of which gauge?", "18 of which gauge?");
      assertThat(WireSection.read("strip 12 x 18 ga").problem().orElseThrow())
          .contains("12 of which gauge?");
    }

    @Test
    void thatIsTooThickForItsWidthIsToldSoByGaugeToo() {
      assertThat(WireSection.read("half-round 12 AWG x 16 AWG").problem().orElseThrow())
          .startsWith("Half-round wire is at most half as thick as it is wide");
    }
  }

  @Nested
  class BesideAnother {
    private final WireSection strip = WireSection.strip(3, 1);

    @Test
    void isTheSameToHalfAThousandthOfAMillimetre() {
      assertThat(strip.isLike(WireSection.strip(3.0004, 1))).isTrue();
      assertThat(strip.isLike(WireSection.strip(3, 0.9996))).isTrue();
      assertThat(strip.isLike(WireSection.strip(3.0006, 1))).isFalse();
      assertThat(strip.isLike(WireSection.strip(3, 1.0006))).isFalse();
      assertThat(WireSection.round(1).isLike(new WireSection(Section.SQUARE, 1, 1))).isFalse();
    }

    @Test
    void ofAnotherThicknessKeepsItsShape() {
      assertThat(strip.asThickAs(0.5)).isEqualTo(WireSection.strip(1.5, 0.5));
      assertThat(WireSection.round(0.9).asThickAs(1.2)).isEqualTo(WireSection.round(1.2));
    }
  }
}
