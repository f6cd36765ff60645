package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Check values of the trade for a plain scroll chain: common practice, no source. */
class PlanReferenceTest {
  @Test
  void a_scroll_of_0_9_mm_wire_from_a_38_1_mm_blank_is_about_14_mm_by_5_mm() {
    Plan plan = Wishes.common().plan();
    assertThat(plan.formed().orElseThrow().lengthMm()).isCloseTo(14, withPercentage(5));
    assertThat(plan.formed().orElseThrow().widthMm()).isCloseTo(5, withPercentage(8));
    assertThat(plan.formed().orElseThrow().thicknessMm()).isEqualTo(0.9);
  }

  @Test
  void twenty_seven_links_with_one_ring_at_each_end_take_twenty_eight_rings() {
    for (int twentiethsMm = 40; twentiethsMm <= 60; twentiethsMm++) {
      double ring = twentiethsMm / 20.0;
      double link = Wishes.common().plan().linkInsideMm();
      double length = 27 * link + 28 * ring + 14;
      Plan plan =
          Wishes.common()
              .with(WishKeys.RING_INSIDE, ring + " mm")
              .with(WishKeys.FINISHED, length + " mm")
              .plan();
      assertThat(plan.links()).isEqualTo(27);
      assertThat(plan.rings()).isEqualTo(28);
      assertThat(plan.lengthMm()).isCloseTo(length, Offset.offset(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.25, 2.5})
  void with_small_rings_and_a_clasp_twenty_seven_links_make_about_406_mm_and_about_9_g(
      double ring) {
    double link = Wishes.common().plan().linkInsideMm();
    double length = 27 * link + 28 * ring + 14;
    Plan plan =
        Wishes.common()
            .with(WishKeys.RING_INSIDE, ring + " mm")
            .with(WishKeys.FINISHED, length + " mm")
            .plan();
    assertThat(plan.links()).isEqualTo(27);
    assertThat(plan.lengthMm()).isCloseTo(406, withPercentage(5));
    assertThat(plan.massChainG()).isCloseTo(9, withPercentage(10));
  }

  @Test
  void solder_pieces_are_no_longer_than_a_millimetre() {
    assertThat(Wishes.common().plan().solder().pieceMm()).isPositive().isLessThanOrEqualTo(1);
  }

  @Test
  void a_blank_of_25_4_mm_makes_a_chunkier_link_or_none() {
    WishReading reading = Wishes.common().with(WishKeys.LINK_BLANK, "25.4 mm").read();
    Planning.plan(reading.wish().orElseThrow())
        .found()
        .flatMap(Plan::formed)
        .ifPresent(
            link ->
                assertThat(link.lengthMm() / link.widthMm())
                    .isLessThan(
                        Wishes.common().plan().formed().orElseThrow().lengthMm()
                            / Wishes.common().plan().formed().orElseThrow().widthMm()));
  }
}
