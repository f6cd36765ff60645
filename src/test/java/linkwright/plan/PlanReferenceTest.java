package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A plain scroll chain of 0.9 mm sterling, beside what the trade says of it and sums by hand. */
class PlanReferenceTest {
  private static final Offset<Double> TO_THE_WHOLE = Offset.offset(0.5);
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** Sterling, 92.5/7.5: the supplier's data sheet (ESPI Metals). */
  private static final double STERLING_G_CM3 = 10.36;

  private static Plan with(double ringInsideMm, double finishedMm) {
    return Wishes.common()
        .with(WishKeys.RING_INSIDE, ringInsideMm + " mm")
        .with(WishKeys.FINISHED, finishedMm + " mm")
        .plan();
  }

  /** Common practice, no source; said to the whole millimetre and gram. */
  @Nested
  class AsTheTradeSays {
    @Test
    void a_scroll_from_a_38_1_mm_blank_is_14_mm_by_5_mm() {
      // The trade says so of the link as it lies on its formers; once off them the wire springs.
      Formed onItsFormers =
          Forming.form(Wishes.LIBRARY.patterns().get("scroll"), 0.9, 38.1, Map.of(), Bending.TRUE)
              .orThrow();
      assertThat(onItsFormers.lengthMm()).isCloseTo(14, TO_THE_WHOLE);
      assertThat(onItsFormers.widthMm()).isCloseTo(5, TO_THE_WHOLE);
      assertThat(onItsFormers.wireMm()).isEqualTo(0.9);
      assertThat(Wishes.common().plan().link().lengthMm().orElseThrow())
          .isCloseTo(14, TO_THE_WHOLE);
    }

    @Test
    void with_rings_of_2_mm_and_a_clasp_sixteen_inches_are_27_links_and_28_rings_and_9_g() {
      // Springback makes each link 0.4 mm longer or shorter than the trade's round figure: 27 links
      // make the 406 mm to within one link.
      double oneMore = Wishes.common().plan().linkInsideMm() + 2;
      Plan plan = with(2, 406);
      assertThat(plan.rings()).isEqualTo(plan.links() + 1);
      assertThat(plan.links() * 1.0).isCloseTo(27, Offset.offset(1.0));
      assertThat(plan.lengthMm()).isCloseTo(406, Offset.offset(oneMore / 2));
      assertThat(plan.massChainG()).isCloseTo(9, Offset.offset(1.0));
    }

    /** Solder pieces: about as long as the wire is thick, rarely over 1 mm on thin wire. */
    @Test
    void a_piece_of_solder_is_about_as_long_as_the_wire_is_thick() {
      assertThat(Wishes.common().plan().solder().pieceMm())
          .isCloseTo(0.9, Offset.offset(0.1))
          .isLessThanOrEqualTo(1);
    }
  }

  @Nested
  class ByHand {
    @ParameterizedTest(name = "rings of {0} mm")
    @ValueSource(doubles = {2, 2.25, 2.5, 3})
    void n_links_and_one_ring_more_and_the_clasp_are_the_length(double ring) {
      double length = 27 * Wishes.common().plan().linkInsideMm() + 28 * ring + 14;
      Plan plan = with(ring, length);
      assertThat(plan.links()).isEqualTo(27);
      assertThat(plan.rings()).isEqualTo(28);
      assertThat(plan.lengthMm()).isCloseTo(length, Offset.offset(1e-6)); // as it was typed
    }

    @ParameterizedTest(name = "rings of {0} mm")
    @ValueSource(doubles = {2, 2.5})
    void blanks_and_rings_and_solder_and_clasp_are_the_mass(double ring) {
      Plan plan = with(ring, 406);
      double gramsPerMm = Math.PI * 0.9 * 0.9 / 4 * STERLING_G_CM3 / 1000;
      assertThat(plan.massLinksG()).isCloseTo(plan.links() * 38.1 * gramsPerMm, EXACT);
      assertThat(plan.massRingsG())
          .isCloseTo(plan.rings() * Math.PI * (ring + 0.9) * gramsPerMm, EXACT);
      assertThat(plan.massChainG())
          .isCloseTo(plan.massLinksG() + plan.massRingsG() + plan.solderPlacedG() + 0.9, EXACT);
    }

    /**
     * The bends alone take, in each half, 285° over 1 mm and 285° over 3.5 mm: 2 × 285 π / 180 ×
     * ((1 + 0.9) / 2 + (3.5 + 0.9) / 2) = 31.34 mm; springback opens each bend, which takes more.
     */
    @Test
    void a_blank_of_an_inch_is_too_short_for_the_bends() {
      String wrong = Wishes.common().with(WishKeys.LINK_BLANK, "25.4 mm").wrong();
      assertThat(wrong)
          .startsWith(
              "A blank of 25.4 mm is too short for the bends of \"scroll\": the shortest that"
                  + " works is ");
      double shortest = Double.parseDouble(wrong.replaceAll(".*works is ([0-9.]+) mm.*", "$1"));
      assertThat(shortest).isBetween(31.34, 31.34 * 1.03);
    }
  }

  /** Common practice, no source. */
  @Test
  void a_shorter_blank_over_the_same_formers_is_a_chunkier_link() {
    assertThat(lengthToWidth("33 mm")).isLessThan(lengthToWidth("35.5 mm"));
    assertThat(lengthToWidth("35.5 mm")).isLessThan(lengthToWidth("38.1 mm"));
  }

  private static double lengthToWidth(String blank) {
    Formed link = Wishes.common().with(WishKeys.LINK_BLANK, blank).plan().formed().orElseThrow();
    return link.lengthMm() / link.widthMm();
  }
}
