package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.routine.PieceKind;
import linkwright.standing.JobBook;
import linkwright.standing.Lots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is out of reason of a lot, and what is just within it. */
class LotQuestionsTest {
  private static final UnitStyle UNITS = UnitStyle.METRIC;
  private static final Reference REFERENCE = JobBook.HANDBOOK.reference();
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** A millimetre of 0.9 mm sterling, g: a circle's area by 10.36 g/cm³ (supplier's data sheet). */
  private static final double MM_G = Math.PI * 0.81 / 4 * 10.36 / 1000;

  /** Empty for 0. */
  private static OptionalDouble of(double value) {
    return value == 0 ? NONE : OptionalDouble.of(value);
  }

  private static LotFact.LotArrived came(
      String lot, String metal, double wireMm, double lengthMm, double massG) {
    return new LotFact.LotArrived(
        lot, "wire", metal, of(wireMm), "", "", of(lengthMm), of(massG), "");
  }

  private static Map<String, String> asked(double wireMm, double lengthMm, double massG) {
    return LotQuestions.ofCame(came("coil", "sterling", wireMm, lengthMm, massG), REFERENCE, UNITS);
  }

  /** A metre of it weighs 6.59 g; a fifth off is the most that one wire may be. */
  @ParameterizedTest
  @CsvSource({"1, false", "1.19, false", "1.21, true", "0.81, false", "0.79, true", "10, true"})
  void a_length_and_a_mass_that_are_not_of_one_wire_are_asked_about(double times, boolean asked) {
    assertThat(asked(0.9, 1000, times * 1000 * MM_G).containsKey("mass")).isEqualTo(asked);
    Lot rod = Lots.wire("rod", "sterling", 2, 300);
    LotFact.LotTurned turned =
        new LotFact.LotTurned("rod", "coil", of(0.9), of(1000), of(times * 1000 * MM_G), "");
    assertThat(LotQuestions.ofTurned(turned, rod, REFERENCE, UNITS).containsKey("mass"))
        .isEqualTo(asked);
  }

  @Test
  void the_question_says_what_that_length_weighs() {
    assertThat(asked(0.9, 1000, 66).get("mass"))
        .isEqualTo(
            "1 m of that wire weigh 6.59 g, not 66 g: which is it? Kept so, the length counts.");
  }

  @Test
  void one_of_the_two_or_a_metal_of_unknown_density_is_nothing_to_compare() {
    assertThat(asked(0.9, 1000, 0)).isEmpty();
    assertThat(asked(0.9, 0, 40)).isEmpty();
    assertThat(asked(0, 1000, 40)).isEmpty();
    assertThat(LotQuestions.ofCame(came("coil", "unobtainium", 0.9, 1000, 40), REFERENCE, UNITS))
        .isEmpty();
  }

  /** 200 m and 2 kg are the most that lies in a bench's drawer: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "200000, 0, ''",
    "200001, 0, length",
    "0, 2000, ''",
    "0, 2000.1, mass",
  })
  void more_than_any_drawer_holds_is_asked_about(double mm, double grams, String field) {
    assertThat(asked(0.9, mm, grams).keySet())
        .isEqualTo(field.isEmpty() ? Map.of().keySet() : java.util.Set.of(field));
  }

  @Test
  void a_length_without_a_thickness_is_no_amount() {
    assertThat(LotQuestions.wrong(came("coil", "sterling", 0, 500, 0), Drawer.EMPTY, UNITS))
        .containsOnlyKeys("mass");
    for (LotFact.LotArrived good :
        List.of(
            came("coil", "sterling", 0.9, 500, 0),
            came("coil", "sterling", 0, 500, 12),
            came("coil", "sterling", 0, 0, 12),
            came("coil", "sterling", 0, 0, 0))) {
      assertThat(LotQuestions.wrong(good, Drawer.EMPTY, UNITS)).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "coil, sterling, 0.9, ''",
    "coil, sterling, 0.905, ''",
    "other, copper, 2, ''",
    "coil, copper, 0.9, “coil” is sterling of 0.9 mm",
    "coil, sterling, 1, “coil” is sterling of 0.9 mm",
    "coil, sterling, 0, “coil” is sterling of 0.9 mm",
    "scrap, sterling, 0, ''",
    "scrap, copper, 0, “scrap” is sterling:",
    "scrap, sterling, 0.9, “scrap” is sterling:",
  })
  void another_metal_or_thickness_is_another_lot(
      String lot, String metal, double wireMm, String wrong) {
    Drawer drawer =
        Lots.drawer(
            Lots.wire("coil", "sterling", 0.9, 500), Lots.weighed("scrap", "scrap", "sterling", 9));
    Map<String, String> said = LotQuestions.wrong(came(lot, metal, wireMm, 0, 5), drawer, UNITS);
    assertThat(said.keySet()).hasSize(wrong.isEmpty() ? 0 : 1);
    assertThat(said.getOrDefault("lot", "")).startsWith(wrong);
  }

  @Test
  void no_more_is_taken_out_of_a_lot_than_it_holds() {
    Lot coil = Lots.wire("coil", "sterling", 0.9, 1000);
    Fact some = new Fact.WireAdded(PieceKind.LINK, 0.9, 600, "", "", "coil");
    Fact rest = new Fact.WireAdded(PieceKind.LINK, 0.9, 400, "", "", "coil");
    Fact more = new Fact.WireAdded(PieceKind.LINK, 0.9, 401, "", "", "coil");
    assertThat(LotQuestions.beyond(List.of(some, new Fact.Noted("a"), rest), coil, UNITS))
        .isEmpty();
    assertThat(LotQuestions.beyond(List.of(some, more), coil, UNITS).orElseThrow())
        .startsWith("1 m are left of it");
    Lot scrap = Lots.weighed("scrap", "scrap", "sterling", 50);
    assertThat(LotQuestions.beyond(List.of(some), scrap, UNITS).orElseThrow())
        .startsWith("0 mm are left of it");
  }

  @Test
  void a_lot_that_lies_there_already_is_told_with_how_much_of_it() {
    assertThat(LotQuestions.there(Lots.wire("coil", "sterling", 0.9, 1500), UNITS))
        .contains("“coil” lies in the drawer already, 1.5 m of it");
    assertThat(LotQuestions.there(Lots.weighed("scrap", "scrap", "sterling", 9.5), UNITS))
        .contains("“scrap” lies in the drawer already, 9.5 g of it");
    Drawer drawer = Lots.drawer(Lots.wire("a", "copper", 1, 5), Lots.wire("b", "copper", 1, 6));
    assertThat(LotQuestions.lot("b", drawer).orElseThrow().lengthMm()).hasValue(6);
    assertThat(LotQuestions.lot("c", drawer)).isEmpty();
  }
}
