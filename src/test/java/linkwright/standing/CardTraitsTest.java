package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.OwnSolder;
import linkwright.bench.Pickle;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.When;
import org.junit.jupiter.api.Test;

/** Which cautions are meant for a job and a bench; what is not known excludes none. */
class CardTraitsTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final CardTraits UNKNOWN = CardTraits.of(Map.of(), JobBook.HANDBOOK);

  private static Caution card(Map<String, List<String>> when, Hazard... covers) {
    return card(new When(when, NONE, NONE), covers);
  }

  private static Caution card(When when, Hazard... covers) {
    return new Caution(
        "c",
        "",
        Set.of(covers),
        "",
        "",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "",
        "",
        when,
        List.of(),
        false);
  }

  private static OwnSolder solder(String name, String grade) {
    return new OwnSolder(name, grade, "", OptionalInt.empty(), NONE, NONE, NONE, NONE);
  }

  private static CardTraits at(Flame flame, String pickle, OwnSolder... solders) {
    OwnBench bench =
        new OwnBench(
            "",
            List.of(),
            Optional.empty(),
            Map.of(),
            List.of(),
            NONE,
            flame,
            new Pickle(pickle, OptionalLong.empty(), Optional.empty()),
            List.of(solders),
            OwnPrices.NONE,
            Map.of(),
            Map.of(),
            OptionalLong.empty(),
            Map.of(),
            List.of());
    return CardTraits.of(Wishes.common().texts(), JobBook.HANDBOOK.with(bench));
  }

  @Test
  void a_card_of_one_gas_is_for_the_bench_that_burns_it() {
    Caution propane = card(Map.of("fuel", List.of("propane")));
    Caution bottled = card(Map.of("oxygen", List.of("yes")));
    CardTraits oxygen = at(new Flame("", "propane", true), "");
    CardTraits air = at(new Flame("", "butane", false), "");
    assertThat(oxygen.meet(propane)).isTrue();
    assertThat(air.meet(propane)).isFalse();
    assertThat(oxygen.meet(bottled)).isTrue();
    assertThat(air.meet(bottled)).isFalse();
    for (CardTraits unsaid : List.of(UNKNOWN, at(Flame.NOT_SAID, ""))) {
      assertThat(unsaid.meet(propane)).isTrue();
      assertThat(unsaid.meet(bottled)).isTrue();
      assertThat(unsaid.words()).doesNotContainKeys("fuel", "oxygen", "pickle");
    }
  }

  @Test
  void a_card_of_one_pickle_is_for_the_bench_that_has_it() {
    Caution acid = card(Map.of("pickle", List.of("sulphuric")));
    assertThat(at(Flame.NOT_SAID, "citric").meet(acid)).isFalse();
    assertThat(at(Flame.NOT_SAID, "sulphuric").meet(acid)).isTrue();
    assertThat(at(Flame.NOT_SAID, "").meet(acid)).isTrue();
  }

  /** One of her solders is enough, by its name or its grade. */
  @Test
  void a_card_of_a_solder_is_for_the_bench_where_such_solder_lies() {
    Caution easy = card(Map.of("solder", List.of("easy", "cadmium-easy")));
    assertThat(at(Flame.NOT_SAID, "", solder("mine", "hard")).meet(easy)).isFalse();
    assertThat(at(Flame.NOT_SAID, "", solder("mine", "hard"), solder("b", "easy")).meet(easy))
        .isTrue();
    assertThat(at(Flame.NOT_SAID, "", solder("cadmium-easy", "")).meet(easy)).isTrue();
    assertThat(at(Flame.NOT_SAID, "").meet(easy)).as("nobody said what solders there are").isTrue();
    assertThat(at(Flame.NOT_SAID, "", solder("mine", "hard")).meet(card(Map.of()))).isTrue();
    assertThat(at(Flame.NOT_SAID, "", solder("mine", "")).solders()).containsExactly("mine");
  }

  /** Sterling of 0.9 mm. */
  @Test
  void the_plan_says_metal_and_wire() {
    CardTraits sterling = at(Flame.NOT_SAID, "");
    assertThat(sterling.meet(card(Map.of("metal", List.of("sterling"))))).isTrue();
    assertThat(sterling.meet(card(Map.of("metal", List.of("copper"))))).isFalse();
    assertThat(UNKNOWN.meet(card(Map.of("metal", List.of("copper"))))).isTrue();
    Caution thick = card(new When(Map.of(), OptionalDouble.of(0.95), NONE));
    assertThat(sterling.meet(thick)).isFalse();
    assertThat(
            CardTraits.of(Wishes.common().with(WishKeys.WIRE, "1 mm").texts(), JobBook.HANDBOOK)
                .meet(thick))
        .isTrue();
    Caution both =
        card(
            new When(
                Map.of("solder", List.of("easy")),
                OptionalDouble.of(0.95),
                OptionalDouble.empty()));
    assertThat(sterling.meet(both)).as("both have to hold").isFalse();
  }

  @Test
  void the_reason_names_what_the_card_hangs_on_as_it_is_now() {
    CardTraits bench = at(new Flame("", "propane", true), "citric");
    assertThat(bench.reason(card(Map.of("metal", List.of("sterling")))))
        .isEqualTo("metal sterling; ");
    assertThat(bench.reason(card(Map.of(), Hazard.BURNS_GAS))).isEqualTo("fuel propane; ");
    assertThat(bench.reason(card(Map.of(), Hazard.PICKLES))).isEqualTo("pickle citric; ");
    assertThat(bench.reason(card(Map.of(), Hazard.BURNS_GAS, Hazard.PICKLES)))
        .isEqualTo("fuel propane; pickle citric; ");
    assertThat(bench.reason(card(Map.of()))).isEmpty();
    assertThat(UNKNOWN.reason(card(Map.of("metal", List.of("sterling")), Hazard.BURNS_GAS)))
        .as("what is not known is no reason")
        .isEmpty();
  }
}
