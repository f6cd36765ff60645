package linkwright.standing.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.drawer.Drawer;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.standing.JobBook;
import linkwright.standing.Lots;
import linkwright.standing.Standing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Wire that a job lacks, links' and rings', and what lies of it in the drawer. */
class WireInDrawerTest {
  private static final Offset<Double> NEAR = Offset.offset(0.01);

  /** One turn of a coil, mm: π · (inside + wire), a wire's thickness to the side. */
  private static double turn(double insideMm, double wireMm) {
    return Math.hypot(Math.PI * (insideMm + wireMm), wireMm);
  }

  /** Blanks of 38.1 mm, nothing lost in cutting, coiling or making: only lengths add up. */
  private static Wishes plain() {
    return Wishes.common()
        .with(WishKeys.KERF, "0 mm")
        .with(WishKeys.COIL_TAIL, "0 mm")
        .with(WishKeys.USUAL_LOSS, "0 %");
  }

  private static Standing standing(Wishes wishes) {
    return JobBook.scroll(wishes.texts()).standing();
  }

  private static double linksMm(Standing standing) {
    return 38.1 * standing.counted().plan().orElseThrow().links();
  }

  private static double ringsMm(Standing standing, double wireMm) {
    return standing.counted().plan().orElseThrow().rings() * turn(2.5, wireMm);
  }

  @Test
  void rings_of_the_links_wire_are_lacking_in_one_with_it() {
    Standing standing = standing(plain());
    WireWanted wanted = WireWanted.of(standing).orElseThrow();
    assertThat(wanted.metal()).isEqualTo("sterling");
    assertThat(wanted.wireMm()).isEqualTo(0.9);
    assertThat(wanted.lacksMm()).isCloseTo(linksMm(standing) + ringsMm(standing, 0.9), NEAR);
  }

  @Test
  void rings_of_a_wire_of_their_own_are_told_by_themselves() {
    Standing standing = standing(plain().with(WishKeys.RING_WIRE, "0.8 mm"));
    Drawer drawer =
        Lots.drawer(
            Lots.wire("coil", "sterling", 0.9, 500),
            Lots.wire("rest", "sterling", 0.9, 120),
            Lots.wire("used up", "sterling", 0.9, 0),
            Lots.wire("fine", "fine-silver", 0.9, 4000),
            Lots.wire("thin", "sterling", 0.8, 60_000));
    List<WireInDrawer> wires = WireInDrawer.of(standing, drawer);
    assertThat(wires).hasSize(2);
    WireInDrawer links = wires.get(0);
    assertThat(links.wanted().lacksMm()).isCloseTo(linksMm(standing), NEAR);
    assertThat(links.lots()).containsExactly("coil", "rest");
    assertThat(links.thereMm()).isEqualTo(620);
    assertThat(links.toBuyMm()).isCloseTo(linksMm(standing) - 620, NEAR);
    WireInDrawer rings = wires.get(1);
    assertThat(rings.wanted().wireMm()).isEqualTo(0.8);
    assertThat(rings.wanted().lacksMm()).isCloseTo(ringsMm(standing, 0.8), NEAR);
    assertThat(rings.lots()).containsExactly("thin");
    assertThat(rings.toBuyMm()).as("there is more than it takes").isZero();
  }

  @Test
  void wire_on_hand_for_the_job_is_not_lacking() {
    Wishes own = plain().with(WishKeys.RING_WIRE, "0.8 mm");
    Drawer drawer = Lots.drawer(Lots.wire("coil", "copper", 2, 500));
    Standing links = standing(own.with(WishKeys.STOCK, "9 m"));
    assertThat(WireWanted.of(links)).isEmpty();
    assertThat(WireInDrawer.of(links, drawer)).hasSize(1);
    WireInDrawer rings = WireInDrawer.of(links, drawer).get(0);
    assertThat(rings.wanted().wireMm()).isEqualTo(0.8);
    assertThat(rings.wanted().lacksMm()).isCloseTo(ringsMm(links, 0.8), Offset.offset(0.5));
    assertThat(rings.lots()).isEmpty();
    assertThat(rings.toBuyMm()).isEqualTo(rings.wanted().lacksMm());
    assertThat(WireInDrawer.of(standing(own.with(WishKeys.RING_STOCK, "9 m")), drawer)).isEmpty();
  }

  /** 381 mm are ten blanks: what lacks is the others, and not what rings of another wire take. */
  @Test
  void of_wire_that_is_too_short_the_rest_is_lacking() {
    Standing own =
        standing(plain().with(WishKeys.RING_WIRE, "0.8 mm").with(WishKeys.STOCK, "381 mm"));
    assertThat(WireWanted.of(own).orElseThrow().lacksMm())
        .isCloseTo(linksMm(own) - 381, Offset.offset(0.5));
    Standing shared = standing(plain().with(WishKeys.STOCK, "381 mm"));
    double lacks = linksMm(shared) + ringsMm(shared, 0.9) - 381;
    assertThat(WireWanted.of(shared).orElseThrow().lacksMm())
        .as("less than a blank of it is over")
        .isBetween(lacks - 0.01, lacks + 38.1);
  }

  @Test
  void nothing_is_said_of_a_drawer_in_which_nothing_was_ever_entered_nor_without_a_plan() {
    assertThat(WireInDrawer.of(standing(plain()), Drawer.EMPTY)).isEmpty();
    Standing unplanned = JobBook.of("scroll-and-ring").standing();
    assertThat(WireWanted.of(unplanned)).isEmpty();
    assertThat(WireInDrawer.of(unplanned, Lots.drawer(Lots.wire("coil", "sterling", 0.9, 500))))
        .isEmpty();
  }

  @Test
  void a_chain_without_rings_lacks_no_wire_for_any() {
    Wishes round =
        plain()
            .without(WishKeys.LINK_BLANK, WishKeys.RING_INSIDE)
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_LENGTH, "8 mm");
    Standing standing = Standing.ofWish(round.texts(), JobBook.HANDBOOK);
    Plan plan = standing.counted().plan().orElseThrow();
    assertThat(plan.rings()).isZero();
    assertThat(WireInDrawer.of(standing, Lots.drawer(Lots.wire("coil", "sterling", 0.9, 500))))
        .singleElement()
        .satisfies(
            wire ->
                assertThat(wire.wanted().lacksMm())
                    .isCloseTo(plan.links() * plan.linkBlankMm(), NEAR));
  }
}
