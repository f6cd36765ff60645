package linkwright.standing.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.standing.JobBook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where nothing can be said of what is within reach, and of what wire may be sold in. */
class WithinReachTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OnHand METAL = new OnHand("", OptionalDouble.of(8), NONE, NONE);

  private static Map<String, String> wish(String wire) {
    return Wishes.common().with(WishKeys.WIRE, wire).texts();
  }

  private static WithinReach of(Map<String, String> wish, OnHand there) {
    return WithinReach.of(
        wish, JobBook.scroll(wish).state(), JobBook.HANDBOOK, there, UnitStyle.METRIC);
  }

  private static List<Double> sizes(String wire, UnitStyle units) {
    Map<String, String> wish = wish(wire);
    return new Variants(wish, JobBook.scroll(wish).state(), JobBook.HANDBOOK, METAL).sizes(units);
  }

  @Test
  void a_wish_that_cannot_be_read_says_what_is_wrong_with_it() {
    WithinReach wrong = of(wish("thick"), METAL);
    assertThat(wrong.trouble()).contains("thick");
    assertThat(wrong.each()).isEmpty();
    assertThat(wrong.together().longest()).isEmpty();
    assertThat(wrong.together().heaviestSaid(UnitStyle.METRIC)).isEmpty();
  }

  @Test
  void a_wish_that_comes_to_no_chain_says_why() {
    Map<String, String> none =
        Wishes.common()
            .with(WishKeys.RING_INSIDE, "0.5 mm")
            .with(WishKeys.FINISHED, "1 mm")
            .texts();
    assertThat(JobBook.scroll(none).standing().counted().plan()).isEmpty();
    assertThat(of(none, METAL).trouble()).isNotEmpty();
  }

  @Test
  void where_nothing_was_said_it_is_asked_what_there_is() {
    assertThat(of(wish("0.9 mm"), OnHand.NOTHING).trouble()).startsWith("Say what there is");
    OnHand money = new OnHand("", NONE, OptionalDouble.of(90), NONE);
    assertThat(of(wish("0.9 mm"), money).trouble()).startsWith("No prices are known");
  }

  /** Tenths from 0.3 to 3 mm, or the American gauges that lie between; the wished wire always. */
  @Test
  void wire_is_sold_in_tenths_or_in_gauge_numbers() {
    List<Double> tenths = sizes("0.95 mm", UnitStyle.METRIC);
    assertThat(tenths).contains(0.3, 3.0, 0.9, 1.0, 0.95).doesNotHaveDuplicates().hasSize(29);
    assertThat(sizes("0.9 mm", UnitStyle.METRIC)).hasSize(28);
    List<Double> gauges = sizes("0.9 mm", UnitStyle.INCH);
    assertThat(gauges).contains(0.9).allMatch(mm -> mm >= 0.3 && mm <= 3);
    // 18 AWG is 0.0403 in, 8 AWG 0.1285 in and beyond 3 mm (ASTM B258, from memory).
    assertThat(gauges).anyMatch(mm -> Math.abs(mm - 1.024) < 0.001);
    assertThat(gauges).noneMatch(mm -> Math.abs(mm - 3.264) < 0.01);
  }

  /** A link weighs a quarter of a gramme: 8 g are some of them, a hundredth of one is none. */
  @Test
  void a_few_grams_are_a_short_chain_and_a_grain_is_none() {
    WithinReach little = of(wish("0.9 mm"), METAL);
    assertThat(little.together().unbounded()).isFalse();
    assertThat(little.binding()).containsExactly(Bound.METAL);
    assertThat(little.onceMore().get(Bound.METAL)).isGreaterThan(8);
    assertThat(little.together().taken().orElseThrow()).isLessThanOrEqualTo(8);
    WithinReach none = of(wish("0.9 mm"), new OnHand("", OptionalDouble.of(0.01), NONE, NONE));
    assertThat(none.trouble()).isEmpty();
    assertThat(none.together().longest()).isEmpty();
    assertThat(none.together().taken()).isEmpty();
    assertThat(none.together().heaviest()).isEmpty();
  }

  private static List<WhatIf> variants(List<Map<String, String>> variants) {
    Map<String, String> wish = Wishes.common().with(WishKeys.STOCK, "3 m").texts();
    return WhatIf.of(wish, JobBook.scroll(wish).state(), JobBook.HANDBOOK, variants);
  }

  @Test
  void a_variant_that_changes_nothing_is_none_and_more_than_four_have_no_room() {
    List<WhatIf> all =
        variants(
            List.of(
                Map.of(WishKeys.WIRE, " "),
                Map.of(WishKeys.WIRE, " 0.9 mm "),
                Map.of(WishKeys.WIRE, " 0.8 mm ", WishKeys.METAL, ""),
                Map.of(WishKeys.FINISHED, "45 cm"),
                Map.of(WishKeys.METAL, "fine-silver"),
                Map.of(WishKeys.FINISHED, "50 cm")));
    assertThat(all)
        .extracting(WhatIf::says)
        .containsExactly("as planned", "0.8 mm", "45 cm", "Fine silver");
  }

  /** Wire on hand is of the planned metal and size: for another it is none. */
  @Test
  void wire_on_hand_counts_for_a_variant_of_the_same_wire_alone() {
    List<WhatIf> all =
        variants(List.of(Map.of(WishKeys.FINISHED, "45 cm"), Map.of(WishKeys.WIRE, "0.8 mm")));
    assertThat(all)
        .extracting(one -> one.standing().wireKnown())
        .containsExactly(true, true, false);
    double links = all.get(1).standing().counted().plan().orElseThrow().links();
    assertThat(all.get(0).standing().counted().plan().orElseThrow().links() / links)
        .as("406 to 450 mm")
        .isCloseTo(406.0 / 450, Offset.offset(0.03));
  }
}
