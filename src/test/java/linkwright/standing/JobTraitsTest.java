package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.BenchFact;
import linkwright.job.JobCard;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.When;
import linkwright.standing.asked.Questions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobTraitsTest {
  private static When when(String trait, String... words) {
    return new When(Map.of(trait, List.of(words)), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static JobTraits traits(String key, String text) {
    return JobTraits.of(Map.of(key, text), JobBook.HANDBOOK.reference());
  }

  @Test
  void a_metal_is_known_by_any_of_its_names_and_with_its_family() {
    JobTraits silver = traits(WishKeys.METAL, "925");
    assertThat(silver.meet(when("metal", "sterling"))).isTrue();
    assertThat(silver.meet(when("metal", "fine-silver", "fine-gold"))).isFalse();
    assertThat(silver.meet(when("family", "gold", "silver"))).isTrue();
  }

  @Test
  void a_clasp_is_known_by_its_name_and_not_by_its_length() {
    assertThat(traits(WishKeys.CLASP_LENGTH, "toggle").meet(when("clasp", "bolt-ring"))).isFalse();
    assertThat(traits(WishKeys.CLASP_LENGTH, "16 mm").meet(when("clasp", "bolt-ring"))).isTrue();
  }

  @Test
  void what_is_not_known_leaves_nothing_out() {
    JobTraits nothing = JobTraits.of(Map.of(), JobBook.HANDBOOK.reference());
    assertThat(nothing.meet(when("metal", "sterling"))).isTrue();
  }

  @Test
  void a_step_that_is_not_meant_for_a_job_is_left_out_of_its_walk_and_its_numbering() {
    Routine cable = JobBook.HANDBOOK.routine("round-cable").orElseThrow();
    Routine silver = traits(WishKeys.METAL, "sterling").walked(cable);
    Routine brass = traits(WishKeys.METAL, "brass").walked(cable);
    assertThat(silver.steps()).isEqualTo(cable.steps());
    assertThat(brass.steps().stream().map(Step::id))
        .hasSize(cable.steps().size() - 1)
        .doesNotContain(new StepId("mark"));
  }

  @Test
  void a_metal_that_is_not_planned_is_refused_anew_and_opens_where_it_was_kept() {
    JobBook kept = JobBook.scroll(Wishes.common().with(WishKeys.METAL, "pt950").texts());
    assertThat(kept.standing().counted().plan()).isPresent();
    assertThat(
            Standing.ofTyped(
                    Wishes.common().with(WishKeys.METAL, "platinum").texts(),
                    JobBook.scroll(Wishes.common().texts()).state(),
                    JobBook.HANDBOOK)
                .counted()
                .troubles()
                .get(WishKeys.METAL))
        .startsWith("Platinum is not planned here");
  }

  @Test
  void sterling_for_fused_chain_is_asked_about_before_the_plan_is_kept() {
    Standing standing = JobBook.scroll(Wishes.common().texts()).standing();
    for (String metal : List.of("sterling", "fine-silver", "germanium silver", "gold 917")) {
      Map<String, String> asked =
          Questions.ofPlan(
              standing,
              JobBook.HANDBOOK.routine("loop-in-loop"),
              traits(WishKeys.METAL, metal),
              UnitStyle.METRIC);
      assertThat(asked.containsKey(WishKeys.METAL)).as(metal).isEqualTo(metal.equals("sterling"));
    }
  }

  /** What the card says of a mark is a trait of the job; where it says nothing, none. */
  @ParameterizedTest
  @CsvSource({"hallmark, wanted", "none, none", "'', "})
  void a_job_says_by_its_card_whether_it_is_to_have_a_mark(String said, String trait) {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new BenchFact.CardSet(Map.of(JobCard.MARK, said)));
    JobTraits traits = JobTraits.of(book.state(), JobBook.HANDBOOK.reference());
    assertThat(traits.words().get("mark")).isEqualTo(trait);
    assertThat(traits.words()).containsEntry("metal", "sterling");
    assertThat(traits.wireMm()).hasValue(0.9);
  }
}
