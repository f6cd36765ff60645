package linkwright.standing.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.Pickle;
import linkwright.job.PriceList;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.JobBook;
import linkwright.standing.Standing;
import linkwright.wire.Section;
import linkwright.wire.WireSection;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The longest chain and the heaviest wire that can be had from what there is. */
class ReachTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static final Handbook PRICED =
      JobBook.HANDBOOK.with(
          new OwnBench(
              "",
              List.of(),
              Optional.empty(),
              Map.of(),
              List.of(),
              OptionalDouble.empty(),
              Flame.NOT_SAID,
              Pickle.NOT_SAID,
              List.of(),
              new OwnPrices("EUR", Map.of("sterling", 1.0), Map.of(PriceList.HOUR, 30.0)),
              Map.of(),
              Map.of(),
              OptionalLong.empty(),
              Map.of(),
              List.of()));

  private static final Map<String, String> WISH =
      Wishes.common()
          .without(WishKeys.LINK_BLANK)
          .without(WishKeys.STOCK)
          .with(WishKeys.LINK_LENGTH, "14 mm")
          .with(WishKeys.LINK_WIDTH, "5.6 mm")
          .with(WishKeys.RING_INSIDE, "3 mm")
          .texts();

  private static WithinReach of(Map<String, String> typed) {
    OnHand.Reading read = OnHand.read(typed, WISH, PRICED);
    assertThat(read.troubles()).isEmpty();
    return WithinReach.of(
        WISH, JobBook.scroll(WISH).state(), PRICED, read.onHand(), UnitStyle.METRIC);
  }

  /** A chain of that many links, planned by itself. */
  private static Standing planned(int links) {
    Plan wished = Standing.ofWish(WISH, PRICED).counted().plan().orElseThrow();
    double pitch = wished.oneMoreMm() - wished.lengthMm();
    Map<String, String> wish = new HashMap<>(WISH);
    double mm = wished.lengthMm() + (links - wished.links()) * pitch;
    wish.put(WishKeys.FINISHED, mm + " mm");
    return Standing.ofWish(wish, PRICED);
  }

  @Test
  void twenty_grams_give_the_most_links_whose_wire_weighs_no_more() {
    Plan longest = of(Map.of("metal", "8 g")).together().longest().orElseThrow();
    assertThat(WireToOrder.of(longest).massG()).isLessThanOrEqualTo(8);
    Plan more = planned(longest.links() + 1).counted().plan().orElseThrow();
    assertThat(WireToOrder.of(more).massG()).isGreaterThan(8);
    // By hand: area 0.6362 mm2 of 0.9 mm wire and 10.36 g/cm3 are 6.59 mg a mm.
    double each = Math.PI * 0.9 * 0.9 / 4 * 10.36e-3;
    assertThat(8 / each).isGreaterThan(WireToOrder.of(longest).linksMm());
  }

  @Test
  void six_hours_and_ninety_of_her_money_hold_and_one_link_more_does_not() {
    WithinReach hours = of(Map.of("hours", "6"));
    int byHours = hours.together().longest().orElseThrow().links();
    assertThat(planned(byHours).quote().orElseThrow().hoursFirst()).isLessThanOrEqualTo(6);
    assertThat(planned(byHours + 1).quote().orElseThrow().hoursFirst()).isGreaterThan(6);
    WithinReach money = of(Map.of("money", "190 EUR"));
    int byMoney = money.together().longest().orElseThrow().links();
    assertThat(planned(byMoney).quote().orElseThrow().first().total()).isLessThanOrEqualTo(190);
    assertThat(planned(byMoney + 1).quote().orElseThrow().first().total()).isGreaterThan(190);
    WithinReach both = of(Map.of("hours", "6 h", "money", "190"));
    assertThat(both.together().longest().orElseThrow().links())
        .isEqualTo(Math.min(byHours, byMoney));
    assertThat(both.binding()).contains(byHours <= byMoney ? Bound.HOURS : Bound.MONEY);
    assertThat(both.onceMore()).isNotEmpty();
  }

  @Test
  void this_wire_gives_every_piece_of_the_longest_and_lacks_some_of_the_next() {
    Map<String, String> typed = Map.of("wire", "420 mm, 260 mm, 150 mm");
    int most = of(typed).together().longest().orElseThrow().links();
    for (int links : List.of(most, most + 1)) {
      Map<String, String> wish =
          new LinkedHashMap<>(planned(links).counted().plan().isPresent() ? WISH : Map.of());
      wish.put(WishKeys.FINISHED, planned(links).counted().plan().orElseThrow().lengthMm() + " mm");
      wish.put(WishKeys.STOCK, typed.get("wire"));
      assertThat(Standing.ofWish(wish, PRICED).missing().isEmpty())
          .as(links + " links")
          .isEqualTo(links == most);
    }
  }

  @Test
  void the_heaviest_wire_does_and_a_tenth_thicker_does_not() {
    double heaviest = of(Map.of("metal", "30 g")).together().heaviest().orElseThrow().thicknessMm();
    assertThat(massIn(heaviest)).isLessThanOrEqualTo(30);
    double next = Math.round(10 * heaviest + 1) / 10.0;
    boolean had = 2 * next <= 3 && massIn(next) <= 30;
    assertThat(had).as(next + " mm").isFalse();
  }

  private static double massIn(double mm) {
    Map<String, String> wish = new HashMap<>(WISH);
    wish.put(WishKeys.WIRE, mm + " mm");
    return Standing.ofWish(wish, PRICED)
        .counted()
        .plan()
        .map(plan -> WireToOrder.of(plan).massG())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Drawn from 0.9 to 0.6 mm a length is 2.25 times as long: L1 = L0 (d0/d1)^2. */
  @Test
  void wire_that_is_too_short_as_it_lies_is_drawn_thinner_and_never_thicker() {
    WithinReach little = of(Map.of("wire", "900 mm"));
    assertThat(little.together().longest().orElseThrow().lengthMm()).isLessThan(406);
    assertThat(little.together().heaviest().orElseThrow().thicknessMm()).isLessThan(0.9);
    WithinReach plenty = of(Map.of("wire", "30 m"));
    assertThat(plenty.together().heaviest().orElseThrow().thicknessMm())
        .isEqualTo(0.9, Offset.offset(1e-9));
  }

  @Test
  void what_cannot_be_read_and_what_has_no_price_are_told() {
    assertThat(OnHand.read(Map.of("wire", "long", "hours", "six"), WISH, PRICED).troubles())
        .containsKeys("wire", "hours");
    OnHand money =
        new OnHand("", OptionalDouble.empty(), OptionalDouble.of(90), OptionalDouble.empty());
    assertThat(
            WithinReach.of(
                    WISH, JobBook.scroll(WISH).state(), JobBook.HANDBOOK, money, UnitStyle.METRIC)
                .trouble())
        .contains("No prices are known");
    OnHand both = new OnHand("", OptionalDouble.of(8), OptionalDouble.of(90), NONE);
    WithinReach metal =
        WithinReach.of(
            WISH, JobBook.scroll(WISH).state(), JobBook.HANDBOOK, both, UnitStyle.METRIC);
    assertThat(metal.together().longest()).isPresent();
    assertThat(metal.unknown()).hasSize(1);
  }

  /** A chain of a repeat grows by whole repeats; fewer links than one repeat are no chain. */
  @Test
  void a_chain_of_repeats_is_as_many_repeats_as_there_is_metal_for() {
    Map<String, String> wish =
        Wishes.common()
            .without(WishKeys.STOCK)
            .with(WishKeys.LINK_PATTERN, "oval")
            .with(WishKeys.LINK_BLANK, "20 mm")
            .with(WishKeys.LINK_FORMERS, "end=2.8 mm")
            .with(WishKeys.LINK_REPEAT, "1 link + 2 round ring=3 mm")
            .texts();
    OnHand there =
        new OnHand("", OptionalDouble.of(8), OptionalDouble.empty(), OptionalDouble.empty());
    WithinReach reach =
        WithinReach.of(wish, Standing.newJob(wish, PRICED), PRICED, there, UnitStyle.METRIC);
    assertThat(reach.trouble()).isEmpty();
    Plan longest = reach.together().longest().orElseThrow();
    assertThat(longest.links() % 3).isZero();
    assertThat(longest.links()).isGreaterThan(3);
    assertThat(WireToOrder.of(longest).massG()).isLessThanOrEqualTo(8);
    assertThat(reach.onceMore().get(Bound.METAL)).isGreaterThan(8);
  }

  /** One repeat's length written to four digits may be shorter than the repeat by a hair. */
  @Test
  void no_length_of_a_repeat_as_it_is_written_makes_a_chain_out_of_reach() {
    Map<String, String> wish =
        new Wishes()
            .with(WishKeys.METAL, "sterling")
            .with(WishKeys.WIRE, "1.2 mm")
            .with(WishKeys.LINK_PATTERN, "long")
            .with(WishKeys.LINK_BLANK, "32 mm")
            .with(WishKeys.LINK_FORMERS, "end=3 mm")
            .with(WishKeys.LINK_REPEAT, "1 long + 3 round ring=3.5 mm")
            .with(WishKeys.CLASP_LENGTH, "14 mm")
            .with(WishKeys.CLASP_MASS, "1.1 g")
            .with(WishKeys.KERF, "0.3 mm")
            .with(WishKeys.FINISHED, "46 cm")
            .texts();
    OnHand there =
        new OnHand("", OptionalDouble.of(80), OptionalDouble.empty(), OptionalDouble.empty());
    WithinReach reach =
        WithinReach.of(wish, Standing.newJob(wish, PRICED), PRICED, there, UnitStyle.METRIC);
    assertThat(reach.trouble()).isEmpty();
    assertThat(reach.together().longest().orElseThrow().links()).isGreaterThan(200);
    assertThat(reach.together().heaviest().orElseThrow().thicknessMm())
        .as("two wires have to pass a round link of 3.5 mm")
        .isBetween(1.2, 1.75);
  }

  @Test
  void the_heaviest_half_round_wire_is_half_round_with_both_its_sizes() {
    Map<String, String> wish =
        Wishes.common()
            .without(WishKeys.STOCK, WishKeys.LINK_BLANK)
            .with(WishKeys.WIRE, "half-round 2 mm x 1 mm")
            .with(WishKeys.LINK_PATTERN, "oval")
            .with(WishKeys.LINK_LENGTH, "12 mm")
            .with(WishKeys.LINK_WIDTH, "7 mm")
            .with(WishKeys.RING_INSIDE, "4 mm")
            .with(WishKeys.RING_WIRE, "1 mm")
            .texts();
    OnHand there =
        new OnHand("", OptionalDouble.of(40), OptionalDouble.empty(), OptionalDouble.empty());
    WithinReach reach =
        WithinReach.of(wish, Standing.newJob(wish, PRICED), PRICED, there, UnitStyle.METRIC);
    WireSection heaviest = reach.together().heaviest().orElseThrow();
    assertThat(heaviest.section()).isEqualTo(Section.HALF_ROUND);
    assertThat(heaviest.widthMm()).isCloseTo(2 * heaviest.thicknessMm(), Offset.offset(1e-6));
    Map<String, String> taken = new HashMap<>(wish);
    taken.put(WishKeys.WIRE, heaviest.said(UnitStyle.METRIC));
    double grams =
        WireToOrder.of(Standing.ofWish(taken, PRICED).counted().plan().orElseThrow()).massG();
    assertThat(grams).isLessThanOrEqualTo(40);
  }
}
