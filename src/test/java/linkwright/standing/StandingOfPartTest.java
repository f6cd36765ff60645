package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.job.Fact;
import linkwright.job.Sourced;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Jobs that make no chain, and wishes that no routine can make. */
class StandingOfPartTest {
  private static final PieceKind HOOK = new PieceKind("hook");

  private static JobBook hooks(String pieces) {
    return JobBook.of("clasp-s-hook").and(new Fact.PlanSet(Map.of(PartPlan.PIECES, pieces)));
  }

  /** A loss of 8 in a hundred (the routine's): of 3 a quarter of one, of 7 more than half. */
  @Test
  void as_many_hooks_are_cut_as_are_wanted_with_a_spare_once_one_is_likely_lost() {
    Standing three = hooks("3").standing();
    assertThat(three.counted().holds()).isTrue();
    assertThat(three.counted().plan()).isEmpty();
    assertThat(three.left()).containsOnlyKeys(HOOK);
    assertThat(three.left().get(HOOK).wanted()).isEqualTo(3);
    assertThat(three.left().get(HOOK).toCut()).hasValue(3);
    assertThat(three.left().get(HOOK).canCut()).as("wire is no limit").isGreaterThan(1000);
    assertThat(hooks("7").standing().left().get(HOOK).toCut().orElseThrow()).isGreaterThan(7);
    assertThat(three.wire()).isEmpty();
    assertThat(three.wireKnown()).isFalse();
    assertThat(three.missing()).isEmpty();
  }

  /** A ring's blank runs along its middle: π · (4 + 1) mm. */
  @Test
  void a_ring_takes_its_round_of_wire() {
    Standing rings =
        JobBook.of("jump-rings")
            .and(
                new Fact.PlanSet(
                    Map.of(
                        WishKeys.METAL, "sterling",
                        WishKeys.WIRE, "1 mm",
                        WishKeys.RING_INSIDE, "4 mm",
                        PartPlan.PIECES, "20")))
            .standing();
    assertThat(rings.left().get(PieceKind.RING).wanted()).isEqualTo(20);
    assertThat(rings.takesMm(PieceKind.RING, "")).isCloseTo(5 * Math.PI, Offset.offset(0.2));
    assertThat(rings.takesMm(PieceKind.LINK, "")).isZero();
  }

  /** What its routine says is usual is no choice of hers: her kept plan holds none of it. */
  @Test
  void a_part_is_kept_without_figures_of_a_chain() {
    Fact.PlanSet kept =
        PlanDefaults.kept(
            Map.of(PartPlan.PIECES, "3"), JobBook.of("clasp-s-hook").state(), JobBook.HANDBOOK);
    assertThat(kept.reckonedWith().values())
        .noneMatch(value -> value.from() == Sourced.Source.USUAL);
    Fact.PlanSet chain =
        PlanDefaults.kept(
            Wishes.common().texts(), JobBook.of("scroll-and-ring").state(), JobBook.HANDBOOK);
    assertThat(chain.reckonedWith())
        .containsEntry(WishKeys.USUAL_LOSS, new Sourced("5 %", Sourced.Source.USUAL));
  }

  /** A piece of each size takes its own blank; a ring its turn. */
  @Test
  void each_size_of_link_takes_its_own_wire() {
    Standing figaro =
        JobBook.of("figaro")
            .and(new Fact.PlanSet(Wishes.figaro().with(WishKeys.KERF, "0.4 mm").texts()))
            .standing();
    assertThat(figaro.takesMm(PieceKind.LINK, "long")).isCloseTo(38.4, Offset.offset(1e-9));
    assertThat(figaro.takesMm(PieceKind.LINK, "round")).isCloseTo(13, Offset.offset(1e-9));
    assertThat(figaro.takesMm(PieceKind.LINK, "heart"))
        .as("what is cut next")
        .isCloseTo(38.4, Offset.offset(1e-9));
    assertThat(figaro.takesMm(PieceKind.RING, "round"))
        .isCloseTo(Math.hypot(4 * Math.PI, 1.4), Offset.offset(0.5));
    Standing scroll = JobBook.scroll(Wishes.common().texts()).standing();
    assertThat(scroll.takesMm(PieceKind.LINK, "")).isCloseTo(38.1, Offset.offset(1e-9));
  }

  private static CountedPlan typed(String routine, Wishes wishes) {
    return Standing.ofTyped(wishes.texts(), JobBook.of(routine).state(), JobBook.HANDBOOK)
        .counted();
  }

  @Test
  void a_chain_joined_by_rings_needs_their_inside_and_one_joined_by_links_has_none() {
    CountedPlan ringless = typed("scroll-and-ring", Wishes.common().without(WishKeys.RING_INSIDE));
    assertThat(ringless.holds()).isFalse();
    assertThat(ringless.troubles().get(WishKeys.RING_INSIDE)).contains("such as 3 mm");
    assertThat(ringless.saidIn(UnitStyle.INCH).troubles().get(WishKeys.RING_INSIDE))
        .contains(" in:")
        .doesNotContain("mm");
    Wishes eight =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.LINK_PATTERN, "figure-of-eight")
            .with(WishKeys.LINK_LENGTH, "14 mm");
    assertThat(typed("figure-of-eight", eight).troubles().get(WishKeys.RING_INSIDE))
        .startsWith("Leave the ring empty");
    CountedPlan good = typed("figure-of-eight", eight.without(WishKeys.RING_INSIDE));
    assertThat(good.troubles()).isEmpty();
    assertThat(good.plan().map(Plan::rings)).contains(0);
  }

  @Test
  void a_job_without_a_wish_has_no_plan_and_no_trouble() {
    CountedPlan none = JobBook.of("scroll-and-ring").standing().counted();
    assertThat(none.holds()).isFalse();
    assertThat(none.troubles()).isEmpty();
    CountedPlan wrong =
        JobBook.scroll(Wishes.common().with(WishKeys.WIRE, "thick").texts()).standing().counted();
    assertThat(wrong.holds()).isFalse();
    assertThat(wrong.troubles()).containsOnlyKeys(WishKeys.WIRE);
  }
}
