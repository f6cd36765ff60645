package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.plan.Wishes;
import linkwright.quantity.Read;
import linkwright.reference.Metal;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Sterling drawn through a plate, against reckoning by hand with its volume kept. */
class DrawnDownTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);
  private static final Metal STERLING = Wishes.LIBRARY.reference().metal("sterling").orThrow();

  /**
   * From 2 mm through 1.6 to 1.2 mm for a metre, 10 mm lost at each pointing. Back from the end:
   * 1000 · (1.2/1.6)² + 10 = 572.5 mm, then 572.5 · (1.6/2)² + 10 = 376.4 mm. The first pass takes
   * 1 − 0.64 = 0.36 off; both together 1 − 0.36 = 0.64, which is more than the half that sterling
   * bears (common practice, no source): it is annealed between.
   */
  @Test
  void a_metre_of_1_2_mm_from_2_mm_takes_376_4_mm_and_one_anneal() {
    DrawnDown drawn =
        DrawnDown.of(List.of(1.2, 1.6, 1.0, 2.4), 2, 1.2, 1000, 10, STERLING).orThrow();
    assertThat(drawn.rodMm()).isCloseTo(376.4, EXACT);
    assertThat(drawn.rodG()).isCloseTo(Math.PI * 376.4 * 10.36e-3, EXACT);
    assertThat(drawn.anneals()).isEqualTo(1);
    assertThat(drawn.warnings()).isEmpty();
    assertThat(drawn.passes()).hasSize(2);
    DrawnDown.DrawnPass first = drawn.passes().get(0);
    assertThat(first.throughMm()).isEqualTo(1.6);
    assertThat(first.takesOff()).isCloseTo(0.36, EXACT);
    assertThat(first.sinceAnneal()).isCloseTo(0.36, EXACT);
    assertThat(first.annealBefore()).isFalse();
    DrawnDown.DrawnPass second = drawn.passes().get(1);
    assertThat(second.throughMm()).isEqualTo(1.2);
    assertThat(second.takesOff()).isCloseTo(1 - 0.75 * 0.75, EXACT);
    assertThat(second.sinceAnneal()).as("soft again").isCloseTo(1 - 0.75 * 0.75, EXACT);
    assertThat(second.annealBefore()).isTrue();
  }

  /** 1.8 and 1.6 mm take 0.19 and then 0.36 in all: less than half. */
  @Test
  void what_takes_off_less_than_half_in_all_needs_no_anneal() {
    DrawnDown drawn = DrawnDown.of(List.of(1.8, 1.6), 2, 1.6, 500, 0, STERLING).orThrow();
    assertThat(drawn.anneals()).isZero();
    assertThat(drawn.rodMm()).as("volume is kept").isCloseTo(500 * 0.64, EXACT);
    assertThat(drawn.passes().get(1).sinceAnneal()).isCloseTo(0.36, EXACT);
  }

  /** From 2 to 1.2 mm in one pull takes 64 % off. */
  @Test
  void a_pull_that_takes_off_too_much_is_warned_of_and_a_plate_without_the_hole_is_told() {
    assertThat(DrawnDown.of(List.of(1.2), 2, 1.2, 500, 0, STERLING).orThrow().warnings())
        .singleElement()
        .asString()
        .contains("64 %");
    Read<DrawnDown> none = DrawnDown.of(List.of(1.6), 2, 1.2, 500, 0, STERLING);
    assertThat(none.problem().orElseThrow()).contains("no hole of 1.2 mm");
  }
}
