package linkwright.standing.asked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.JobBook;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;
import linkwright.standing.TestPieces;
import org.junit.jupiter.api.Test;

class QuestionsTest {
  private static final UnitStyle UNITS = UnitStyle.METRIC;
  private final JobBook book = JobBook.scroll(Wishes.common().texts());
  private final Standing standing = book.standing();

  private Map<String, String> ofPlan(String key, String text) {
    return Questions.ofPlan(
        Standing.ofTyped(Wishes.common().with(key, text).texts(), book.state(), JobBook.HANDBOOK),
        JobBook.HANDBOOK.routine(book.state().course().routine()),
        JobTraits.of(Map.of(), JobBook.HANDBOOK.reference()),
        UNITS);
  }

  private Map<String, String> ofPiece(OptionalDouble lengthMm, List<String> verdicts) {
    OptionalDouble none = OptionalDouble.empty();
    Fact.TestPieceTried piece =
        new Fact.TestPieceTried(0.9, 38, Map.of(), lengthMm, none, none, verdicts, "");
    return Questions.ofTestPiece(piece, TestPieces.of(standing, book.state(), ""), standing, UNITS);
  }

  @Test
  void what_is_usual_is_not_asked_about() {
    assertThat(ofPlan(WishKeys.STOCK, "3 m")).isEmpty();
    assertThat(ofPiece(OptionalDouble.of(13.6), List.of("longer"))).isEmpty();
    assertThat(Questions.ofTrial(trial(2.5, 46), standing, UNITS)).isEmpty();
    assertThat(Questions.ofWire(List.of(2000.0), standing, UNITS)).isEmpty();
    assertThat(Questions.ofCut(12, PieceKind.LINK, standing, UNITS)).isEmpty();
  }

  @Test
  void a_size_ten_times_too_large_is_asked_about_with_the_one_meant() {
    assertThat(ofPiece(OptionalDouble.of(138), List.of()).get("length"))
        .isEqualTo("138 mm from a blank of 38 mm? Did you mean 13.8 mm?");
  }

  @Test
  void a_piece_of_which_nothing_is_said_is_asked_about() {
    assertThat(ofPiece(OptionalDouble.empty(), List.of())).containsKey("length");
  }

  @Test
  void wire_loss_and_blanks_out_of_reason_are_asked_about() {
    assertThat(ofPlan(WishKeys.STOCK, "60 m")).containsKey(WishKeys.STOCK);
    assertThat(ofPlan(WishKeys.USUAL_LOSS, "60 %")).containsKey(WishKeys.USUAL_LOSS);
    assertThat(ofPlan(WishKeys.USUAL_LOSS, "95 %").get(WishKeys.USUAL_LOSS))
        .startsWith("95 of a hundred links");
    assertThat(ofPlan(WishKeys.FINISHED, "60 m")).containsKey(WishKeys.FINISHED);
    assertThat(Questions.ofWire(List.of(60_000.0), standing, UNITS)).containsKey("lengths");
    assertThat(Questions.ofWire(List.of(999 * 25.4), standing, UNITS)).containsKey("lengths");
    assertThat(Questions.ofCut(9_999, PieceKind.LINK, standing, UNITS)).containsKey("count");
  }

  /** A ring is as large as its mandrel makes it, however long the blank that was entered. */
  @Test
  void a_ring_far_from_its_mandrel_is_asked_about() {
    Wishes round =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.WIRE, "1 mm")
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_LENGTH, "8 mm")
            .with(WishKeys.RING_INSIDE, "6 mm");
    JobBook cable = JobBook.of("round-cable").and(new Fact.PlanSet(round.texts()));
    for (double blankMm : List.of(22.1, 20.0)) {
      OptionalDouble far = OptionalDouble.of(9.5);
      Fact.TestPieceTried piece =
          new Fact.TestPieceTried(
              1, blankMm, Map.of("ring", 5.8), far, far, OptionalDouble.empty(), List.of(), "");
      assertThat(
              Questions.ofTestPiece(
                  piece,
                  TestPieces.of(cable.standing(), cable.state(), ""),
                  cable.standing(),
                  UNITS))
          .containsKeys("length", "width");
    }
  }

  @Test
  void a_repeat_of_other_links_than_the_routine_has_is_asked_about() {
    JobBook figaro = JobBook.of("figaro");
    for (String repeat :
        List.of("1 long + 1 round ring=2.8 mm", "", "1 long + 2 round ring=3 mm")) {
      Map<String, String> asked =
          Questions.ofPlan(
              Standing.ofTyped(
                  Wishes.figaro().with(WishKeys.LINK_REPEAT, repeat).texts(),
                  figaro.state(),
                  JobBook.HANDBOOK),
              JobBook.HANDBOOK.routine("figaro"),
              JobTraits.of(Map.of(), JobBook.HANDBOOK.reference()),
              UNITS);
      assertThat(asked.containsKey(WishKeys.LINK_REPEAT)).isEqualTo(!repeat.contains("1 round"));
    }
  }

  @Test
  void a_plan_file_goes_by_a_routine_whose_repeat_has_as_many_links() {
    for (String repeat :
        List.of("1 long + 1 round ring=2.8 mm", "", "1 long + 2 round ring=3 mm")) {
      assertThat(
              Standing.routineFor(
                  Wishes.figaro().with(WishKeys.LINK_REPEAT, repeat).texts(), JobBook.HANDBOOK))
          .hasValueSatisfying(
              routine ->
                  assertThat(routine.id())
                      .isEqualTo(repeat.contains("1 round") ? "figaro" : "oval-and-long"));
    }
  }

  @Test
  void a_trial_hung_with_rings_ten_times_as_wide_is_asked_about() {
    assertThat(Questions.ofTrial(trial(22.5, 120), standing, UNITS)).containsKey("ring");
    assertThat(Questions.ofTrial(trial(2.5, 9), standing, UNITS)).containsKey("hung");
  }

  @Test
  void a_chain_73_per_cent_too_heavy_is_asked_about() {
    double planned = standing.counted().plan().orElseThrow().massChainG();
    assertThat(Questions.ofWeighing(weighed(1.73 * planned), standing, UNITS)).containsKey("chain");
    assertThat(Questions.ofWeighing(weighed(1.05 * planned), standing, UNITS)).isEmpty();
  }

  private static Fact.WeighedIn weighed(double grams) {
    OptionalDouble none = OptionalDouble.empty();
    return new Fact.WeighedIn(OptionalDouble.of(grams), none, none, none, none, none, none);
  }

  private static Fact.TrialMeasured trial(double ringMm, double hungMm) {
    return new Fact.TrialMeasured(3, 4, ringMm, OptionalDouble.empty(), hungMm, 0, "");
  }
}
