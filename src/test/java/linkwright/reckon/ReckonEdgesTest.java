package linkwright.reckon;

import static linkwright.reckon.Sums.number;
import static linkwright.reckon.Sums.reckon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What stands at the edges of what can be asked. */
class ReckonEdgesTest {

  @Nested
  class WhatIsWrong {
    @Test
    void a_kilometre_of_wire_is_wondered_at() {
      Reckoning far = Sums.reckon("wire", "metal", "sterling", "wire", "1 mm", "length", "1 km");
      assertThat(far.warnings()).containsExactly("1000 m of wire? Did you mean 1 m?");
      Reckoning coil = Sums.reckon("wire", "metal", "copper", "wire", "1 mm", "length", "300 m");
      assertThat(coil.warnings()).isEmpty();
    }

    @Test
    void isToldAllAtOnceBesideItsAsk() {
      Reckoning wire = reckon("wire", "metal", "sterlin", "wire", "-1 mm", "length", "1 000 mm");

      assertThat(wire.problems()).containsOnlyKeys("metal", "wire", "length");
      assertThat(wire.problems().get("metal")).contains("Did you mean sterling?");
      assertThat(wire.values()).isEmpty();
    }

    @Test
    void tellsWhatIsMissingApart() {
      Reckoning wire = reckon("wire", "metal", "sterling", "length", "much");

      assertThat(wire.missing()).containsExactly("wire");
      assertThat(wire.problems()).containsOnlyKeys("wire", "length");
    }

    @Test
    void namesTheNearestFormer() {
      Reckoning link =
          reckon(
              "link",
              "pattern",
              "scroll",
              "wire",
              "0.9 mm",
              "blank",
              "38 mm",
              "former",
              "bwo=3 mm");

      assertThat(link.problems().get("former")).contains("Did you mean bow?");
    }
  }

  @Nested
  class Sizes {
    @Test
    void ofZeroAreSentences() {
      assertThat(
              reckon("former", "metal", "sterling", "wire", "0.9 mm", "former", "0 mm").problems())
          .containsOnlyKeys("former");
      assertThat(reckon("ring", "wire", "0 mm", "inside", "3 mm").problems())
          .containsOnlyKeys("wire");
      assertThat(reckon("cut", "stock", "1 m", "blank", "0 mm", "want", "3").problems())
          .containsOnlyKeys("blank");
    }

    @Test
    void aWireThickerThanItsFormerIsToldAndReckoned() {
      Reckoning turn = reckon("former", "metal", "sterling", "wire", "3 mm", "former", "1 mm");

      assertThat(number(turn, "inside_mm")).isBetween(1.0, 1.2);
      assertThat(turn.warnings().toString()).contains("thicker than its former");
    }

    @Test
    void aWireThickerThanItsRingIsASentence() {
      assertThat(reckon("ring", "wire", "4 mm", "inside", "3 mm").problems().get("inside"))
          .contains("at least 4 mm");
    }

    @Test
    void aFormerSoWideThatWireSpringsBackWholeIsASentence() {
      assertThat(
              reckon("former", "metal", "sterling", "wire", "0.9 mm", "former", "5 m")
                  .problems()
                  .get("former"))
          .contains("goes straight again");
    }

    @Test
    void aBlankExactlyTheShortestWorksAndOneShorterSaysTheShortest() {
      Reckoning formed = reckon("link", "pattern", "hook-link", "wire", "0.9 mm", "blank", "40 mm");
      double shortest = number(formed, "shortest_blank_mm");

      Reckoning least =
          reckon("link", "pattern", "hook-link", "wire", "0.9 mm", "blank", shortest + " mm");
      Reckoning less =
          reckon("link", "pattern", "hook-link", "wire", "0.9 mm", "blank", (shortest - 1) + " mm");

      assertThat(number(least, "shortest_blank_mm")).isCloseTo(shortest, within(1e-9));
      assertThat(less.problems().get("")).contains("the shortest that works is");
    }
  }

  @Nested
  class Counts {
    @Test
    void ofOneLinkHaveNoneFewer() {
      Reckoning one =
          reckon("chain", "link-inside", "12 mm", "ring-inside", "3 mm", "length", "18 mm");

      assertThat(one.values()).containsEntry("links", 1).containsEntry("rings", 2);
      assertThat(one.values()).containsEntry("one_fewer_mm", Optional.empty());
    }

    @Test
    void ofNoStockCutNothing() {
      Reckoning none = reckon("cut", "stock", "0 mm", "blank", "38 mm", "want", "10");

      assertThat(none.values()).containsEntry("blanks", 0).containsEntry("short", 10);
    }

    @Test
    void ofNoMorePiecesCutNothing() {
      assertThat(reckon("spare", "more", "0", "lost", "3").values()).containsEntry("cut", 0);
    }

    @Test
    void ofLossesAloneAreStillANumber() {
      Reckoning all = reckon("spare", "more", "5", "good", "0", "lost", "10");

      assertThat(number(all, "cut")).isGreaterThan(10);
    }

    @Test
    void whereAllIsLostOrCertaintyIsAskedAreASentence() {
      assertThat(
              reckon("spare", "more", "5", "lost", "20", "usual-loss", "100 %").problems().get(""))
          .contains("no number of blanks is enough");
      assertThat(reckon("spare", "more", "5", "confidence", "100 %").problems().get(""))
          .contains("certain");
    }

    @Test
    void withNoLossesSoFarNeedFewerThanWithSome() {
      assertThat(number(reckon("spare", "more", "27", "good", "20"), "cut"))
          .isLessThan(number(reckon("spare", "more", "27", "good", "20", "lost", "5"), "cut"));
    }
  }

  @Nested
  class Joining {
    @Test
    void withoutRingsSaysHowManyAreClosedFirst() {
      Reckoning hooked =
          reckon("chain", "link-inside", "12 mm", "joining", "each-other", "length", "204 mm");

      assertThat(hooked.values()).containsEntry("links", 17).containsEntry("rings", 0);
      assertThat(hooked.values()).containsEntry("exact_ring_inside_mm", Optional.empty());
      assertThat(Sums.text(hooked)).contains("8 of the links before any are joined");
    }

    @Test
    void takesTheUsualInsideOfKnownPatternsInARepeat() {
      Reckoning chain = reckon("chain", "repeat", "3 round + 1 long", "length", "45 cm");

      assertThat(chain.good()).isTrue();
      assertThat(Sums.text(chain)).contains("as these patterns are usually made");
    }

    @Test
    void withAKindThatIsNotKnownAsksForItsLength() {
      assertThat(
              reckon("chain", "repeat", "3 round + 1 moon", "length", "45 cm")
                  .problems()
                  .get("inside"))
          .contains("moon");
    }
  }

  @Test
  void scalingAllLengthsScalesTheResult() {
    Reckoning one =
        reckon(
            "link",
            "pattern",
            "scroll",
            "wire",
            "0.9 mm",
            "blank",
            "38 mm",
            "former",
            "tip=1 mm; bow=3.5 mm");
    Reckoning three =
        reckon(
            "link",
            "pattern",
            "scroll",
            "wire",
            "2.7 mm",
            "blank",
            "114 mm",
            "former",
            "tip=3 mm; bow=10.5 mm");

    for (String key : List.of("length_mm", "width_mm", "inside_length_mm", "shortest_blank_mm")) {
      assertThat(number(three, key)).isCloseTo(3 * number(one, key), within(1e-9));
    }
  }

  /** Whatever is typed: sentences or finite numbers, never an exception, never NaN in a text. */
  @Test
  void nothingThatIsTypedBringsForthNonsense() {
    long seed = 20261125;
    Random chance = new Random(seed);
    List<String> amounts =
        List.of(
            "",
            "0 mm",
            "-1 mm",
            "0.9 mm",
            "3 mm",
            "14 mm",
            "38.1 mm",
            "45 cm",
            "1 m",
            "10 km",
            "0.000001 mm",
            "19 AWG",
            "NaN",
            "Infinity mm",
            "1e308 mm",
            "1e-300 m",
            "12",
            "x",
            "1 mm x 0.3 mm",
            "412 mm,96 mm",
            "1,5 mm,1,2 mm,0,9 mm",
            "bow=3 mm,3.5 mm",
            "eye=2 mm; tip=1 mm",
            "0",
            "1",
            "27",
            "1000000",
            "-3",
            "99999999999999999999",
            "90 %",
            "100 %",
            "0 %",
            "124 MPa",
            "3 round + 1 long",
            "1 long + 1 ring",
            "😀");
    List<String> likely =
        List.of("0.9 mm", "1 mm", "3 mm", "14 mm", "40 mm", "1 m", "0 mm", "10 km", "0.000001 mm");
    List<Integer> good = new ArrayList<>();
    for (int run = 0; run < 6000; run++) {
      Sum sum = Reckoner.sums().get(chance.nextInt(Reckoner.sums().size()));
      Map<String, String> typed = new LinkedHashMap<>();
      for (Ask ask : sum.asks()) {
        List<String> choices = new ArrayList<>(ask.choices(Sums.given()));
        boolean known = !choices.isEmpty() && chance.nextInt(8) > 0;
        List<String> from = known ? choices : chance.nextInt(4) > 0 ? likely : amounts;
        boolean left = !ask.needed() && chance.nextInt(3) > 0;
        typed.put(ask.key(), left ? "" : from.get(chance.nextInt(from.size())));
      }
      String where = "seed " + seed + ", run " + run + ", " + sum.id() + " " + typed;
      Reckoning reckoning = reckoned(sum, typed, where);
      assertThat(Sums.text(reckoning).replaceAll("[“\"][^”\"]*[”\"]", ""))
          .as(where)
          .doesNotContain("NaN", "Infinity", "Exception", "null", "Optional");
      assertThat(reckoning.good()).as(where).isEqualTo(!reckoning.values().isEmpty());
      if (reckoning.good()) {
        good.add(run);
      }
    }
    assertThat(good)
        .as("runs that come to a result, so that this shows something")
        .hasSizeGreaterThan(300);
  }

  private static Reckoning reckoned(Sum sum, Map<String, String> typed, String where) {
    try {
      return Reckoner.reckon(sum.id(), typed, Sums.given());
    } catch (RuntimeException thrown) {
      throw new AssertionError(where, thrown);
    }
  }
}
