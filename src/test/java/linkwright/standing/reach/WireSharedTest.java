package linkwright.standing.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import linkwright.drawer.Drawer;
import linkwright.standing.Lots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wire that several open jobs lack, against what the drawer holds of it. */
class WireSharedTest {
  private static final WireWanted OWN = new WireWanted("sterling", 0.9, 700);
  private static final Drawer METRE = Lots.drawer(Lots.wire("coil", "sterling", 0.9, 1000));

  private static Optional<WireShared> beside(Drawer drawer, WireWanted... others) {
    return WireShared.of(Optional.of(OWN), List.of(others), drawer);
  }

  @Test
  void two_more_jobs_lack_more_than_is_left_of_it() {
    assertThat(
            beside(
                METRE,
                new WireWanted("sterling", 0.9, 200),
                new WireWanted("sterling", 0.9, 150),
                new WireWanted("fine-silver", 0.9, 999),
                new WireWanted("sterling", 1.0, 999)))
        .contains(new WireShared(OWN, 2, 350, 1000));
  }

  /** A metre does for 700 mm and 300 mm; for a millimetre more it does not. */
  @Test
  void a_drawer_that_does_for_all_is_nothing_to_tell() {
    assertThat(beside(METRE, new WireWanted("sterling", 0.9, 300))).isEmpty();
    assertThat(beside(METRE, new WireWanted("sterling", 0.9, 301))).isPresent();
  }

  @Test
  void where_no_other_job_lacks_it_nothing_is_shared_however_little_there_is() {
    assertThat(beside(Drawer.EMPTY)).isEmpty();
    assertThat(beside(Drawer.EMPTY, new WireWanted("fine-silver", 0.9, 999))).isEmpty();
    assertThat(
            WireShared.of(
                Optional.empty(), List.of(new WireWanted("sterling", 0.9, 999)), Drawer.EMPTY))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0.895, true", "0.905, true", "0.885, false", "0.915, false"})
  void a_hundredth_of_a_millimetre_is_another_wire(double wireMm, boolean same) {
    assertThat(beside(Drawer.EMPTY, new WireWanted("sterling", wireMm, 1)).isPresent())
        .isEqualTo(same);
  }

  /** A lot overdrawn by the books takes nothing off what other lots hold. */
  @Test
  void all_lots_of_that_wire_count_and_no_others() {
    Drawer drawer =
        Lots.drawer(
            Lots.wire("a", "sterling", 0.9, 400),
            Lots.wire("b", "sterling", 0.9, 250),
            Lots.wire("overdrawn", "sterling", 0.9, -90),
            Lots.wire("thick", "sterling", 1.2, 5000),
            Lots.wire("fine", "fine-silver", 0.9, 5000),
            Lots.weighed("scrap", "scrap", "sterling", 30));
    assertThat(beside(drawer, new WireWanted("sterling", 0.9, 10)))
        .contains(new WireShared(OWN, 1, 10, 650));
  }

  @Test
  void what_jobs_lack_together_is_the_sum() {
    assertThat(WireWanted.allMm(List.of(OWN, new WireWanted("copper", 1, 45)))).isEqualTo(745);
    assertThat(WireWanted.allMm(List.of())).isZero();
  }
}
