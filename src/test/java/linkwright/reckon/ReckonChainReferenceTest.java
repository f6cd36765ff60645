package linkwright.reckon;

import static linkwright.reckon.Sums.number;
import static linkwright.reckon.Sums.reckon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import linkwright.fit.ShortPieces;
import linkwright.fit.Tried;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Each sum against a value from outside; the source stands beside it. */
class ReckonChainReferenceTest {
  @Nested
  class Link {
    /** Geometry: a round link is D + 2d both ways and adds D. */
    @Test
    void ofARoundPatternIsItsRing() {
      Reckoning round =
          reckon("link", "pattern", "round", "wire", "1 mm", "blank", Math.PI * 5 + " mm");

      assertThat(number(round, "length_mm")).isCloseTo(6, within(1e-6));
      assertThat(number(round, "width_mm")).isCloseTo(6, within(1e-6));
      assertThat(number(round, "inside_length_mm")).isCloseTo(4, within(1e-6));
    }

    /**
     * Common practice: a 38.1 mm (1.5 in) blank of 0.9 mm wire gives a scroll of about 14 × 5 mm.
     */
    @Test
    void ofAScrollComesNearWhatIsUsual() {
      Reckoning scroll = reckon("link", "pattern", "scroll", "wire", "0.9 mm", "blank", "1 1/2 in");

      assertThat(number(scroll, "length_mm")).isCloseTo(14, within(14 * 0.05));
      assertThat(number(scroll, "width_mm")).isCloseTo(5, within(5 * 0.08));
      assertThat(scroll.values()).containsEntry("crossings", List.of());
    }
  }

  @Nested
  class Planish {
    /**
     * Constancy of volume: a strip 0.7 mm thick of 1 mm round wire is π/4/0.7 = 1.12200 mm wide.
     */
    @Test
    void aRingGrowsOutwardsAndInwardsAlike() {
      Reckoning flat =
          reckon(
              "planish",
              "pattern",
              "round",
              "wire",
              "1 mm",
              "blank",
              Math.PI * 5 + " mm",
              "thickness",
              "0.7 mm");

      assertThat(number(flat, "wire_width_mm")).isCloseTo(1.122, within(5e-5));
      assertThat(number(flat, "length_mm")).isCloseTo(6.122, within(5e-5));
      assertThat(number(flat, "inside_length_mm")).isCloseTo(3.878, within(5e-5));
    }

    @Test
    void toMoreThanTheWireIsRefused() {
      assertThat(
              reckon(
                      "planish",
                      "pattern",
                      "round",
                      "wire",
                      "1 mm",
                      "blank",
                      "16 mm",
                      "thickness",
                      "1.2 mm")
                  .problems())
          .containsEntry(
              "thickness", "That is thicker than the wire: planishing makes it thinner.");
    }
  }

  @Nested
  class Blank {
    /**
     * A maker whose piece came out as the pattern says has nothing to mend: the geometry itself.
     */
    @Test
    void afterATruePieceIsTheBlankOfThatPiece() {
      Reckoning formed = reckon("link", "pattern", "scroll", "wire", "0.9 mm", "blank", "40 mm");
      double length = number(formed, "length_mm");
      double width = number(formed, "width_mm");
      Tried[] same = {
        ShortPieces.measured(40, Map.of(), length, width),
        ShortPieces.measured(40, Map.of(), length, width),
        ShortPieces.measured(40, Map.of(), length, width)
      };

      Reckoning next =
          Reckoner.reckon(
              "blank",
              Sums.typed(
                  "pattern",
                  "scroll",
                  "metal",
                  "sterling",
                  "wire",
                  "0.9 mm",
                  "length",
                  length + " mm",
                  "width",
                  width + " mm"),
              Sums.given(same));

      assertThat(number(next, "blank_mm")).isCloseTo(40, within(0.5));
      assertThat(number(next, "length_mm")).isCloseTo(length, within(0.03 * length));
    }

    @Test
    void isSurerAfterAPieceThanBefore() {
      Map<String, String> wish =
          Sums.typed(
              "pattern",
              "scroll",
              "metal",
              "sterling",
              "wire",
              "0.9 mm",
              "length",
              "14 mm",
              "width",
              "5 mm");
      Tried piece = ShortPieces.measured(38, Map.of("bow", 3.5), 14.1, 5.4);

      double before = number(Reckoner.reckon("blank", wish, Sums.given()), "length_spread_mm");
      double after = number(Reckoner.reckon("blank", wish, Sums.given(piece)), "length_spread_mm");

      assertThat(after).isLessThan(before);
    }
  }

  @Nested
  class Chain {
    /** Common practice, no source: n links with a ring at each end take n + 1 rings. */
    @Test
    void takesARingMoreThanLinks() {
      Reckoning chain =
          reckon(
              "chain",
              "link-inside",
              "12 mm",
              "ring-inside",
              "3 mm",
              "length",
              "45 cm",
              "clasp",
              "12 mm");

      // 29 × 12 + 30 × 3 + 12 = 450
      assertThat(chain.values()).containsEntry("links", 29).containsEntry("rings", 30);
      assertThat(number(chain, "length_mm")).isCloseTo(450, within(1e-9));
      assertThat(number(chain, "one_fewer_mm")).isCloseTo(435, within(1e-9));
      assertThat(number(chain, "one_more_mm")).isCloseTo(465, within(1e-9));
      assertThat(number(chain, "exact_ring_inside_mm")).isCloseTo(3, within(1e-9));
    }

    /** Counting by hand: 3 × 4 + 12 = 24 a repeat, 18 of them and a clasp of 18 are 450. */
    @Test
    void isCountedInWholeRepeats() {
      Reckoning chain =
          reckon(
              "chain",
              "repeat",
              "3 round + 1 long",
              "inside",
              "round=4 mm,long=12 mm",
              "length",
              "45 cm",
              "clasp",
              "18 mm");

      assertThat(chain.values()).containsEntry("links", 72).containsEntry("rings", 0);
      assertThat(number(chain, "length_mm")).isCloseTo(450, within(1e-9));
      assertThat(number(chain, "one_fewer_mm")).isCloseTo(426, within(1e-9));
    }

    @Test
    void tellsTheRingThatMakesARepeatExact() {
      Reckoning chain =
          reckon(
              "chain",
              "repeat",
              "1 long + 1 ring",
              "inside",
              "long=12 mm",
              "ring-inside",
              "3 mm",
              "length",
              "456 mm");

      assertThat(chain.values()).containsEntry("links", 30).containsEntry("rings", 30);
      // 30 × (12 + x) = 456
      assertThat(number(chain, "exact_ring_inside_mm")).isCloseTo(3.2, within(1e-9));
    }
  }

  @Nested
  class Spare {
    /**
     * Beta-binomial as Pólya's urn (Johnson, Kemp and Kotz, Univariate Discrete Distributions, from
     * memory): with Beta(5, 5) the chance that four are all lost is 5·6·7·8/(10·11·12·13) = 9.8 %,
     * that three are 15.9 %.
     */
    @Test
    void cutsTheFewestThatReachTheChance() {
      assertThat(reckon("spare", "more", "1", "usual-loss", "50 %", "confidence", "90 %").values())
          .containsExactly(Map.entry("cut", 4));
      assertThat(reckon("spare", "more", "1", "usual-loss", "50 %", "confidence", "84 %").values())
          .containsExactly(Map.entry("cut", 3));
    }
  }

  @Nested
  class Cut {
    /** Common practice, no source: n pieces cost n kerfs, the last only as far as wire remains. */
    @Test
    void spendsAKerfForEachPiece() {
      Reckoning plan =
          reckon("cut", "stock", "77 mm,76.2 mm", "blank", "38 mm", "want", "9", "kerf", "0.5 mm");

      // 77 = 2 × 38 + 2 × 0.5; of 76.2 the second kerf takes only the 0 mm that its like needs less
      assertThat(plan.values()).containsEntry("blanks", 3).containsEntry("short", 6);
      assertThat(plan.values().get("left_mm")).isEqualTo(List.of(0.0, 37.7));
    }
  }
}
