package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.plan.FigureSource;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a link adds that is folded or turned into its neighbours: not the whole of its inside. */
class WovenLinksTest {
  private static Map<String, String> wish(String metal, String wire, String ring, String finished) {
    return new Wishes()
        .with(WishKeys.METAL, metal)
        .with(WishKeys.WIRE, wire)
        .with(WishKeys.LINK_PATTERN, "round")
        .with(WishKeys.LINK_FORMERS, "ring=" + ring)
        .with(WishKeys.FINISHED, finished)
        .texts();
  }

  private static Plan plan(String routine, Map<String, String> wish) {
    JobBook book = JobBook.of(routine);
    book.enter(PlanDefaults.kept(wish, book.state(), JobBook.HANDBOOK));
    return Standing.of(book.state(), JobBook.HANDBOOK).counted().plan().orElseThrow();
  }

  /**
   * A loop folded to a U: from the middle of a side to the end of the loop its centre line goes a
   * quarter turn round the two ends that it passes through, a leg that leans in and opens, and a
   * quarter turn round what passes through it. Four times that is the ring's centre line. Computed
   * here from the pitch back to the length, by the sides of the box that the leg stands in.
   *
   * @param passes how many loops it passes through
   */
  private static double centreLineMm(double pitchMm, double wireMm, int passes) {
    double bight = (passes + 0.5) * wireMm;
    double end = 1.5 * wireMm;
    double high = passes * pitchMm + wireMm;
    double leg =
        Math.sqrt(sq(high - bight - end) + sq(bight - 0.5 * wireMm) + sq(end - 0.5 * wireMm));
    return 4 * (Math.PI / 2 * bight + leg + Math.PI / 2 * end);
  }

  private static double sq(double x) {
    return x * x;
  }

  @ParameterizedTest
  @CsvSource({
    "loop-in-loop, 1, 12, 1",
    "loop-in-loop, 1, 11.1, 0.81",
    "loop-in-loop, 1, 7.94, 0.51",
    "double-loop-in-loop, 2, 8, 0.5",
    "double-loop-in-loop, 2, 14.4, 0.9"
  })
  void a_folded_loop_is_as_long_as_the_ring_that_it_was(
      String routine, int passes, double ringMm, double wireMm) {
    Plan plan = plan(routine, wish("fine-silver", wireMm + " mm", ringMm + " mm", "45 cm"));
    double inside = plan.formed().orElseThrow().insideLengthMm();
    assertThat(plan.link().insideFrom()).isEqualTo(FigureSource.RECKONED);
    assertThat(centreLineMm(plan.linkInsideMm(), wireMm, passes))
        .isCloseTo(Math.PI * (inside + wireMm), Percentage.withPercentage(2));
  }

  /** It is folded: what a round ring holds is not what it holds. */
  @Test
  void what_it_holds_is_not_told_as_a_round_rings() {
    Map<String, String> wish = wish("fine-silver", "0.81 mm", "11.1 mm", "45 cm");
    assertThat(plan("loop-in-loop", wish).pullIsKnown()).isFalse();
    assertThat(plan("round-cable", wish).pullIsKnown()).isTrue();
  }

  /**
   * 10 ft of 22 gauge over 5/16 in make 20 in: a published project (custom, not a source for a
   * figure; facetjewelry.com, foxtail-chain necklace, 2016), with a clasp of 10 mm and two rings of
   * 5 mm. Its wire has room for coil ends and rings that fail, so the rings take 80 to 100 % of it;
   * by the whole inside they would take 54 %.
   */
  @Test
  void the_rings_of_a_published_chain_come_out_of_its_wire() {
    Plan plan = plan("loop-in-loop", wish("fine-silver", "22 AWG", "0.3125 in", "488 mm"));
    double used = plan.links() * plan.linkBlankMm() / (10 * 304.8);
    assertThat(used).isBetween(0.80, 1.0);
  }

  /**
   * Some forty rings to the inch of 0.64 mm wire: one of the two public descriptions that the
   * routine's file names. Custom, not a source for a figure.
   */
  @Test
  void forty_rings_of_the_ring_weave_make_an_inch() {
    Plan plan = plan("byzantine", wish("sterling", "0.64 mm", "2.25 mm", "45 cm"));
    assertThat(40 * plan.linkInsideMm()).isCloseTo(25.4, Percentage.withPercentage(5));
  }

  @Test
  void a_rope_ring_adds_less_than_its_wire() {
    Plan plan = plan("rope", wish("sterling", "0.9 mm", "3 mm", "45 cm"));
    assertThat(plan.linkInsideMm()).isCloseTo(0.7 * 0.9, Offset.offset(1e-9));
  }

  @Test
  void what_it_may_be_off_is_in_the_length() {
    Plan plan = plan("loop-in-loop", wish("fine-silver", "0.8 mm", "11 mm", "45 cm"));
    assertThat(plan.plusMinusMm()).isBetween(0.1 * 450, 0.25 * 450);
  }

  @Test
  void what_she_says_that_it_adds_goes_before_it() {
    Map<String, String> wish =
        new Wishes()
            .with(WishKeys.METAL, "fine-silver")
            .with(WishKeys.WIRE, "0.8 mm")
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_FORMERS, "ring=11 mm")
            .with(WishKeys.LINK_INSIDE, "7.3 mm")
            .with(WishKeys.FINISHED, "45 cm")
            .texts();
    assertThat(plan("loop-in-loop", wish).linkInsideMm()).isEqualTo(7.3);
  }

  @Test
  void a_ring_too_small_to_fold_is_told() {
    JobBook book = JobBook.of("loop-in-loop");
    book.enter(
        PlanDefaults.kept(
            wish("fine-silver", "1 mm", "2.5 mm", "45 cm"), book.state(), JobBook.HANDBOOK));
    assertThat(Standing.of(book.state(), JobBook.HANDBOOK).counted().sentence())
        .startsWith("So small a ring cannot be folded");
  }
}
