package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.drawer.Lot;
import linkwright.job.LotFact;
import linkwright.quantity.UnitStyle;
import linkwright.standing.JobBook;
import linkwright.standing.Lots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the scale or the rule says of a lot, where the books say something else. */
class LotCountedTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** A millimetre of 0.9 mm sterling, g: a circle's area by 10.36 g/cm³ (supplier's data sheet). */
  private static final double MM_G = Math.PI * 0.81 / 4 * 10.36 / 1000;

  private static Map<String, String> asked(Lot lot, OptionalDouble mm, OptionalDouble grams) {
    return LotQuestions.ofCounted(
        new LotFact.LotCounted(lot.id(), mm, grams, ""),
        lot,
        JobBook.HANDBOOK.reference(),
        UnitStyle.METRIC);
  }

  /**
   * A fifth more than the books say is asked about, and less than half of it; below a gramme nobody
   * is asked.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 11.9, ''",
    "10, 12.1, did more come?",
    "10, 5.1, ''",
    "10, 4.9, is so much gone?",
    "10, 0, is so much gone?",
    "1, 1.9, ''",
    "1, 2.1, did more come?",
    "1.5, 0.6, ''",
    "1.5, 0.4, is so much gone?",
    "0, 0.9, ''",
    "0, 1.1, did more come?",
    "-5, 0, did more come?",
    "-5, -4.5, ''",
  })
  void scale_and_books_that_are_far_apart_are_asked_about(
      double booksG, double saidG, String question) {
    Lot scrap = Lots.weighed("scrap", "scrap", "sterling", booksG);
    Map<String, String> asked = asked(scrap, NONE, OptionalDouble.of(saidG));
    assertThat(asked.keySet()).hasSize(question.isEmpty() ? 0 : 1);
    assertThat(asked.getOrDefault("mass", "")).endsWith(question);
  }

  @Test
  void a_question_names_both_in_what_was_said() {
    Lot coil = Lots.wire("coil", "sterling", 0.9, 1000, OptionalDouble.of(1000 * MM_G));
    assertThat(asked(coil, OptionalDouble.of(3000), NONE))
        .containsOnly(Map.entry("length", "3 m of coil, where the books say 1 m: did more come?"));
    assertThat(asked(coil, OptionalDouble.of(400), NONE))
        .containsOnly(
            Map.entry("length", "400 mm of coil, where the books say 1 m: is so much gone?"));
    assertThat(asked(coil, NONE, OptionalDouble.of(20)))
        .containsOnly(
            Map.entry("mass", "20 g of coil, where the books say 6.59 g: did more come?"));
    assertThat(asked(coil, OptionalDouble.of(990), NONE)).isEmpty();
  }

  /** Both were said, and they are not of one wire: that comes before anything else. */
  @Test
  void a_length_and_a_mass_that_are_not_of_one_wire_are_asked_about_first() {
    Lot coil = Lots.wire("coil", "sterling", 0.9, 1000, OptionalDouble.of(1000 * MM_G));
    assertThat(asked(coil, OptionalDouble.of(1000), OptionalDouble.of(20)).get("mass"))
        .startsWith("1 m of that wire weigh 6.59 g, not 20 g");
  }

  @Test
  void of_a_metal_of_unknown_density_a_length_is_nothing_to_compare() {
    Lot strange = Lots.wire("coil", "unobtainium", 0.9, 1000);
    assertThat(asked(strange, OptionalDouble.of(9000), NONE)).isEmpty();
  }

  @Test
  void what_is_no_wire_is_weighed() {
    Lot scrap = Lots.weighed("scrap", "scrap", "sterling", 10);
    Lot coil = Lots.wire("coil", "sterling", 0.9, 1000);
    OptionalDouble some = OptionalDouble.of(7);
    assertThat(LotQuestions.wrong(new LotFact.LotCounted("scrap", some, NONE, ""), scrap))
        .containsOnlyKeys("mass");
    assertThat(LotQuestions.wrong(new LotFact.LotCounted("scrap", NONE, some, ""), scrap))
        .isEmpty();
    assertThat(LotQuestions.wrong(new LotFact.LotCounted("coil", some, NONE, ""), coil)).isEmpty();
  }
}
