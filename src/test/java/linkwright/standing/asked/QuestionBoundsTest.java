package linkwright.standing.asked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.JobBook;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where asking begins: just within is kept in silence, just beyond is asked about. */
class QuestionBoundsTest {
  private static final UnitStyle UNITS = UnitStyle.METRIC;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final JobBook book = JobBook.scroll(Wishes.common().texts());
  private final Standing standing = book.standing();
  private final Plan plan = standing.counted().plan().orElseThrow();

  private Map<String, String> ofPlan(Wishes wishes) {
    return Questions.ofPlan(
        Standing.ofTyped(wishes.texts(), book.state(), JobBook.HANDBOOK),
        JobBook.HANDBOOK.routine("scroll-and-ring"),
        JobTraits.of(Map.of(), JobBook.HANDBOOK.reference()),
        UNITS);
  }

  @ParameterizedTest
  @CsvSource({
    "stock, 50 m, false",
    "stock, 50.1 m, true",
    "usual-loss, 49 %, false",
    "usual-loss, 50 %, true",
    "kerf, 1 mm, false",
    "kerf, 1.05 mm, true",
  })
  void of_a_plan(String key, String text, boolean asked) {
    assertThat(ofPlan(Wishes.common().with(key, text)).containsKey(key)).isEqualTo(asked);
  }

  /** One repeat is 15 + 3 mm of links and two rings of 3 mm; a ring and the clasp beside: 39 mm. */
  @ParameterizedTest
  @CsvSource({"35 mm, false", "33 mm, true"})
  void of_a_length_that_is_shorter_than_one_repeat(String finished, boolean asked) {
    Standing typed =
        Standing.ofTyped(
            Wishes.figaro().with(WishKeys.FINISHED, finished).texts(),
            JobBook.of("figaro").state(),
            JobBook.HANDBOOK);
    assertThat(typed.counted().plan().orElseThrow().lengthMm()).isCloseTo(39, Offset.offset(1e-9));
    assertThat(
            Questions.ofPlan(
                    typed,
                    JobBook.HANDBOOK.routine("figaro"),
                    JobTraits.of(Map.of(), JobBook.HANDBOOK.reference()),
                    UNITS)
                .containsKey(WishKeys.FINISHED))
        .isEqualTo(asked);
  }

  @Test
  void wire_of_links_and_rings_is_added_up() {
    Wishes two = Wishes.common().with(WishKeys.RING_WIRE, "0.8 mm").with(WishKeys.STOCK, "30 m");
    assertThat(ofPlan(two.with(WishKeys.RING_STOCK, "19 m"))).isEmpty();
    assertThat(ofPlan(two.with(WishKeys.RING_STOCK, "21 m")).get(WishKeys.STOCK))
        .startsWith("51 m of wire");
  }

  /** Rings of 2.5 mm were wished: twice as wide or half as wide is far. */
  @ParameterizedTest
  @CsvSource({"5, 4, false", "5.1, 4, true", "1.25, 4, false", "1.2, 4, true", "9, 0, false"})
  void of_the_rings_of_a_trial(double insideMm, int rings, boolean asked) {
    assertThat(
            Questions.ofTrial(
                    new Fact.TrialMeasured(3, rings, insideMm, NONE, 60, 0, ""), standing, UNITS)
                .containsKey("ring"))
        .isEqualTo(asked);
  }

  /** Three links of so many times what is counted, four rings of 2.5 mm and a clasp of 14 mm. */
  @ParameterizedTest
  @CsvSource({"1, false", "1.24, false", "1.26, true", "0.76, false", "0.74, true"})
  void of_what_a_link_of_a_trial_adds(double times, boolean asked) {
    double hungMm = 3 * times * plan.meanInsideMm() + 4 * 2.5 + 14;
    Fact.TrialMeasured trial = new Fact.TrialMeasured(3, 4, 2.5, NONE, hungMm, 14, "");
    assertThat(Questions.ofTrial(trial, standing, UNITS).containsKey("hung")).isEqualTo(asked);
  }

  @Test
  void a_trial_says_what_a_link_would_add_or_that_it_would_add_nothing() {
    Fact.TrialMeasured longer = new Fact.TrialMeasured(3, 4, 2.5, NONE, 100, 0, "");
    assertThat(Questions.ofTrial(longer, standing, UNITS).get("hung"))
        .startsWith("Each link would add 30 mm, where 12.1 mm is counted");
    Fact.TrialMeasured none = new Fact.TrialMeasured(3, 4, 2.5, NONE, 10, 0, "");
    assertThat(Questions.ofTrial(none, standing, UNITS).get("hung"))
        .startsWith("Rings and clasp alone");
  }

  /** Ten times what the chain takes; without a plan 50 m, and never less than ten metres. */
  @Test
  void of_wire_that_came() {
    double takes = plan.wireTotalMm();
    assertThat(Questions.ofWire(List.of(9.9 * takes), standing, UNITS)).isEmpty();
    assertThat(Questions.ofWire(List.of(6 * takes, 4.1 * takes), standing, UNITS))
        .containsKey("lengths");
    Standing bare = JobBook.of("scroll-and-ring").standing();
    assertThat(Questions.ofWire(List.of(50_000.0), bare, UNITS)).isEmpty();
    assertThat(Questions.ofWire(List.of(50_001.0), bare, UNITS)).containsKey("lengths");
    Standing little =
        Standing.ofWish(Wishes.common().with(WishKeys.FINISHED, "50 mm").texts(), JobBook.HANDBOOK);
    assertThat(little.counted().plan().orElseThrow().wireTotalMm()).isLessThan(900);
    assertThat(Questions.ofWire(List.of(10_000.0), little, UNITS)).isEmpty();
    assertThat(Questions.ofWire(List.of(10_001.0), little, UNITS)).containsKey("lengths");
  }

  private static Map<String, String> cut(JobBook job, int count, int before) {
    return Questions.ofCut(
        new Fact.WireCut(PieceKind.LINK, count, 38.1),
        before,
        job.standing(),
        job.state().wire(),
        UNITS);
  }

  /** Three metres are 78 blanks of 38.1 mm. */
  @Test
  void of_blanks_that_the_wire_does_not_give() {
    JobBook wired = JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts());
    assertThat(Questions.ofCut(78, PieceKind.LINK, wired.standing(), UNITS)).isEmpty();
    assertThat(Questions.ofCut(79, PieceKind.LINK, wired.standing(), UNITS))
        .isEqualTo(Map.of("count", "79, where the wire on hand gives 78?"));
    assertThat(cut(wired, 78, 0)).isEmpty();
    assertThat(cut(wired, 79, 0).get("count")).isEqualTo("79, where the wire on hand gives 78?");
    assertThat(cut(wired, 79, 5).get("count"))
        .isEqualTo("79 more, where the wire on hand then gives 78?");
    assertThat(cut(JobBook.of("scroll-and-ring"), 79, 0)).as("nothing planned").isEmpty();
  }

  /** The chain takes 27 links: ten times as many are no slip of hers that goes unasked. */
  @Test
  void of_ten_times_the_pieces_that_the_chain_takes() {
    int most = 10 * plan.links();
    assertThat(cut(book, most, 0)).isEmpty();
    assertThat(cut(book, most + 1, 0).get("count"))
        .isEqualTo(most + 1 + " links cut, where the chain takes " + plan.links() + "?");
    assertThat(cut(book, 1, most).get("count")).startsWith(most + 1 + " links cut");
    assertThat(cut(book, 1, most + 1)).as("it was asked already").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "1.29, 1, ''", "1.31, 1, chain", "0.71, 1, ''", "0.69, 1, chain",
    "1, 1.14, ''", "1, 1.16, length", "1, 0.86, ''", "1, 0.84, length",
  })
  void of_what_was_weighed_in(double mass, double length, String field) {
    Fact.WeighedIn in =
        new Fact.WeighedIn(
            OptionalDouble.of(mass * plan.massChainG()),
            OptionalDouble.of(length * plan.lengthMm()),
            NONE,
            NONE,
            NONE,
            NONE,
            NONE);
    assertThat(String.join(" ", Questions.ofWeighing(in, standing, UNITS).keySet()))
        .isEqualTo(field);
  }

  private Map<String, String> piece(
      OptionalDouble lengthMm, OptionalDouble widthMm, OptionalDouble insideMm) {
    return Questions.ofTestPiece(
        new Fact.TestPieceTried(0.9, 38, Map.of(), lengthMm, widthMm, insideMm, List.of(), ""),
        Optional.empty(),
        standing,
        UNITS);
  }

  @Test
  void of_a_piece_of_no_known_pattern() {
    OptionalDouble some = OptionalDouble.of(5);
    assertThat(piece(OptionalDouble.of(38), NONE, NONE)).isEmpty();
    assertThat(piece(OptionalDouble.of(38.1), NONE, NONE))
        .isEqualTo(Map.of("length", "38.1 mm from a blank of 38 mm?"));
    assertThat(piece(NONE, some, NONE)).isEmpty();
    assertThat(piece(NONE, NONE, some)).isEmpty();
  }
}
