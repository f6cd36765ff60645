package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Chains whose links are of several sizes, and rings at their ends, against reckoning by hand. */
class SizesTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  @Nested
  class Repeats {
    /** 24 m + 3 + 12 is nearest 450 at m = 18: 447. */
    @Test
    void a_chain_is_whole_repeats_and_one_ring() {
      Plan plan = Wishes.figaro().plan();

      assertThat(plan.links()).isEqualTo(36);
      assertThat(plan.rings()).isEqualTo(37);
      assertThat(plan.lengthMm()).isCloseTo(447, EXACT);
      assertThat(plan.oneFewerMm().orElseThrow()).isCloseTo(423, EXACT);
      assertThat(plan.oneMoreMm()).isCloseTo(471, EXACT);
    }

    /** (450 - 12 - 18 · 18) / 37. */
    @Test
    void the_exact_ring_is_shared_out_over_all_rings() {
      assertThat(Wishes.figaro().plan().exactRingInsideMm().orElseThrow())
          .isCloseTo(114 / 37.0, EXACT);
    }

    /** 18 · 38 + 18 · 12.6 = 910.8 mm of π/4 mm² at sterling's density. */
    @Test
    void each_size_has_its_own_blanks_wire_and_mass() {
      Plan plan = Wishes.figaro().plan();
      double gramsPerMm = Math.PI / 4 * plan.wish().metal().densityGCm3().value() / 1000;

      assertThat(plan.sizes()).extracting(LinksOfSize::links).containsExactly(18, 18);
      assertThat(plan.sizes()).extracting(LinksOfSize::toCut).containsExactly(18, 18);
      assertThat(plan.wireLinksMm()).isCloseTo(910.8, EXACT);
      assertThat(plan.massLinksG()).isCloseTo(910.8 * gramsPerMm, EXACT);
      assertThat(plan.sizes().get(1).massG()).isCloseTo(226.8 * gramsPerMm, EXACT);
    }

    /** A joint each: 18 long, 18 round, 37 rings. */
    @Test
    void joints_are_those_of_all_sizes() {
      assertThat(Wishes.figaro().plan().joints()).isEqualTo(73);
    }

    /** The mean of long and round, as one plans without a repeat, gives other wire. */
    @Test
    void the_mean_link_is_no_substitute() {
      Plan mean =
          Wishes.figaro().without(WishKeys.LINK_REPEAT).with(WishKeys.LINK_INSIDE, "9 mm").plan();

      assertThat(mean.lengthMm()).isCloseTo(447, EXACT);
      assertThat(mean.wireLinksMm()).isCloseTo(36 * 38, EXACT);
    }

    /** Without rings each size hooks into the next: m · (15 + 2 · 5) + 12, at 450: 17.52 → 18. */
    @Test
    void links_that_join_each_other() {
      Plan plan =
          Wishes.figaro()
              .without(WishKeys.RING_INSIDE)
              .with(WishKeys.LINK_REPEAT, "1 link + 2 round ring=5 mm blank=19 mm inside=5 mm")
              .plan();

      assertThat(plan.links()).isEqualTo(54);
      assertThat(plan.rings()).isZero();
      assertThat(plan.lengthMm()).isCloseTo(462, EXACT);
      assertThat(plan.sizes()).extracting(LinksOfSize::links).containsExactly(18, 36);
    }

    @Test
    void the_ring_after_each_link_may_be_named_and_changes_nothing() {
      String repeat = "1 long + 1 round ring=2.8 mm blank=12.6 mm inside=3 mm";
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, repeat + " + 2 ring").plan().links())
          .isEqualTo(Wishes.figaro().plan().links());
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, repeat + " + 1 ring").wrong())
          .startsWith("A ring comes after every link, 2 in this repeat");
    }

    @Test
    void graduated_sizes_of_one_pattern_have_names_of_their_own() {
      Plan plan =
          Wishes.figaro()
              .with(
                  WishKeys.LINK_REPEAT,
                  "2 long + 4 mid blank=30 mm + 6 small blank=24 mm, end=2.5 mm")
              .with(WishKeys.FINISHED, "200 mm")
              .plan();

      assertThat(plan.sizes()).extracting(LinksOfSize::links).containsExactly(2, 4, 6);
      assertThat(plan.sizes())
          .extracting(LinksOfSize::name)
          .containsExactly("long", "mid", "small");
      assertThat(plan.sizes().get(2).link().formersMm()).containsEntry("end", 2.5);
      assertThat(plan.sizes().get(1).link().insideMm())
          .isGreaterThan(plan.sizes().get(2).link().insideMm());
    }

    /** Each size reckoned by itself is the link that a chain of it alone has. */
    @Test
    void a_size_is_the_link_of_a_chain_of_it_alone() {
      Wishes repeat =
          Wishes.figaro()
              .without(WishKeys.LINK_INSIDE)
              .with(WishKeys.LINK_REPEAT, "1 long + 1 round ring=4 mm");
      Plan alone =
          Wishes.figaro()
              .without(WishKeys.LINK_INSIDE, WishKeys.LINK_REPEAT, WishKeys.LINK_BLANK)
              .with(WishKeys.LINK_PATTERN, "round")
              .with(WishKeys.LINK_FORMERS, "ring=4 mm")
              .plan();
      SettledLink round = repeat.plan().sizes().get(1).link();

      assertThat(round.insideMm()).isCloseTo(alone.linkInsideMm(), EXACT);
      assertThat(round.blankMm()).isCloseTo(alone.linkBlankMm(), EXACT);
    }

    @Test
    void what_is_wrong_with_a_repeat_is_told() {
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, "3 round ring=3 mm").wrong())
          .contains("how many of the planned link");
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, "1 long + round").wrong())
          .contains("“round” is not a number of links");
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, "1 long + 1 round eye=3 mm").wrong())
          .contains("round")
          .contains("no former “eye”");
      assertThat(Wishes.figaro().with(WishKeys.LINK_REPEAT, "1 long + 1 round").wrong())
          .contains("round")
          .contains("Give the former");
      assertThat(
              Wishes.figaro().with(WishKeys.LINK_REPEAT, "1 long + 1 round ring=3 mm big").wrong())
          .contains("round")
          .contains("“mm big” is not a unit");
      assertThat(
              Wishes.figaro()
                  .with(WishKeys.LINK_REPEAT, "1 long blank=3 mm + 1 round ring=3 mm")
                  .wrong())
          .contains("its own fields");
    }
  }

  @Nested
  class AtTheEnds {
    /** 2 · 6 mm, 2 · π · 7 mm of wire, two joints more. */
    @Test
    void rings_at_the_ends_have_length_wire_mass_and_joints() {
      Plan without = Wishes.figaro().with(WishKeys.FINISHED, "447 mm").plan();
      Plan with =
          Wishes.figaro().with(WishKeys.FINISHED, "459 mm").with(WishKeys.RING_ENDS, "6 mm").plan();
      double wire = 2 * Math.PI * 7;

      assertThat(with.links()).isEqualTo(without.links());
      assertThat(with.lengthMm() - without.lengthMm()).isCloseTo(12, EXACT);
      assertThat(with.wireTotalMm() - without.wireTotalMm()).isCloseTo(wire, EXACT);
      assertThat(with.massRingsG() - without.massRingsG())
          .isCloseTo(wire * Math.PI / 4 * with.wish().metal().densityGCm3().value() / 1000, EXACT);
      assertThat(with.joints() - without.joints()).isEqualTo(2);
      assertThat(with.solderPlacedG()).isGreaterThan(without.solderPlacedG());
      assertThat(with.massChainG() - without.massChainG())
          .isCloseTo(
              with.massRingsG()
                  - without.massRingsG()
                  + with.solderPlacedG()
                  - without.solderPlacedG(),
              EXACT);
      assertThat(with.allRings()).isEqualTo(39);
    }

    @Test
    void a_ring_that_two_wires_do_not_pass_is_told() {
      assertThat(Wishes.figaro().with(WishKeys.RING_ENDS, "1.5 mm").plan().remarks())
          .anyMatch(each -> each.contains("do not pass the jump ring at the end"));
    }
  }

  /** Of 488 rings of 0.9 mm three hung against a rule of 0.3 mm tell less than is known of them. */
  @Test
  void a_trial_that_would_tell_less_than_is_known_promises_nothing() {
    Wishes fine =
        new Wishes()
            .with(WishKeys.METAL, "sterling")
            .with(WishKeys.WIRE, "0.3 mm")
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_FORMERS, "ring=0.9 mm")
            .with(WishKeys.FINISHED, "450 mm");
    assertThat(fine.plan().links()).isGreaterThan(400);
    assertThat(fine.plan().plusMinusTrialMm()).isEmpty();
    assertThat(fine.with(WishKeys.WIRE, "1 mm").with(WishKeys.LINK_FORMERS, "ring=4 mm").plan())
        .satisfies(
            coarse ->
                assertThat(coarse.plusMinusTrialMm().orElse(0))
                    .isPositive()
                    .isLessThan(coarse.plusMinusMm()));
  }
}
