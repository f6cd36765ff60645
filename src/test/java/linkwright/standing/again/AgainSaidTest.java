package linkwright.standing.again;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.standing.JobBook;
import org.junit.jupiter.api.Test;

/** What carries over to the same chain again, and what is tried anew, as it is said. */
class AgainSaidTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static JobBook planned() {
    return JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "2 m").texts());
  }

  /** A sample of 37.4 mm, and three links hung between four rings squeezed to 2 mm. */
  private static JobBook settled() {
    JobBook book = planned();
    EntryId piece =
        book.enter(
            new Fact.TestPieceTried(
                0.9,
                37.4,
                Map.of("tip", 1.2),
                OptionalDouble.of(13.9),
                OptionalDouble.of(5.5),
                NONE,
                List.of("right"),
                ""));
    book.enter(new Fact.SampleChosen(piece, true));
    EntryId trial =
        book.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.of(2), 49.3, 0, ""));
    return book.and(new Fact.TrialChosen(trial));
  }

  private static MadeAgain again(JobBook book, Map<String, String> changes) {
    return MadeAgain.of(book.state(), JobBook.HANDBOOK, changes, UnitStyle.METRIC);
  }

  @Test
  void blanks_are_those_of_the_sample_or_as_they_were_planned() {
    assertThat(again(settled(), Map.of()).carries())
        .contains("Blanks of 37.4 mm, as the sample's was.");
    assertThat(again(planned(), Map.of()).carries())
        .contains("Blanks of 38.1 mm, as they were planned.");
  }

  @Test
  void rings_are_said_with_what_they_were_squeezed_to() {
    assertThat(again(settled(), Map.of()).carries())
        .contains("Rings of 2.5 mm inside, squeezed to 2 mm, as they were chosen.");
    assertThat(again(settled(), Map.of()).wish())
        .containsEntry(WishKeys.RING_INSIDE, "2.5 mm")
        .containsEntry(WishKeys.RING_OVAL, "2 mm");
    assertThat(again(planned(), Map.of()).carries())
        .contains("Rings of 2.5 mm inside, as they were chosen.");
    assertThat(again(planned(), Map.of()).wish()).doesNotContainKey(WishKeys.RING_OVAL);
  }

  @Test
  void what_a_link_adds_carries_over_only_where_it_was_measured() {
    assertThat(again(settled(), Map.of()).carries())
        .anyMatch(said -> said.endsWith("as measured."));
    assertThat(again(settled(), Map.of()).wish()).containsKey(WishKeys.LINK_INSIDE);
    assertThat(again(planned(), Map.of()).carries())
        .noneMatch(said -> said.endsWith("as measured."));
    assertThat(again(planned(), Map.of()).wish()).doesNotContainKey(WishKeys.LINK_INSIDE);
  }

  @Test
  void in_the_same_metal_and_wire_nothing_is_tried_anew() {
    MadeAgain same = again(settled(), Map.of(WishKeys.METAL, " ", WishKeys.WIRE, "0.9 mm"));
    assertThat(same.anew()).isEmpty();
    assertThat(same.inAnotherMetal()).isFalse();
    assertThat(same.firstMetal()).isEqualTo("Sterling silver");
    assertThat(same.wish()).containsEntry(WishKeys.METAL, "sterling");
  }

  @Test
  void in_other_wire_the_link_is_found_anew() {
    MadeAgain thin = again(settled(), Map.of(WishKeys.WIRE, "0.8 mm"));
    assertThat(thin.inAnotherMetal()).isFalse();
    assertThat(thin.anew().get(0))
        .startsWith("This wire springs otherwise: the blank, 37.4 mm before, is reckoned anew");
    assertThat(thin.anew().get(2)).isEqualTo("Losses and hours were those of the other wire.");
    assertThat(thin.wish()).doesNotContainKeys(WishKeys.LINK_BLANK, WishKeys.LINK_INSIDE);
  }

  @Test
  void in_another_metal_solder_and_heat_are_its_own() {
    MadeAgain fine = again(settled(), Map.of(WishKeys.METAL, "fine-silver"));
    assertThat(fine.inAnotherMetal()).isTrue();
    assertThat(fine.firstMetal()).isEqualTo("Sterling silver");
    assertThat(fine.anew().get(0)).startsWith("This metal springs otherwise");
    assertThat(fine.anew().get(2)).startsWith("Solder, heat and pickle");
  }

  @Test
  void wire_on_hand_stays_with_the_first() {
    assertThat(again(planned(), Map.of()).wish()).doesNotContainKey(WishKeys.STOCK);
  }

  /** A chain of which nothing was weighed and no link is made came to nothing. */
  @Test
  void what_the_first_came_to_is_told_once_it_was_made_or_weighed() {
    assertThat(again(settled(), Map.of()).earlier()).isEmpty();
    JobBook weighed =
        settled().and(new Fact.WeighedIn(OptionalDouble.of(9), NONE, NONE, NONE, NONE, NONE, NONE));
    assertThat(again(weighed, Map.of()).earlier()).isPresent();
  }

  @Test
  void a_job_that_was_never_planned_carries_nothing_over() {
    MadeAgain bare = again(JobBook.of("scroll-and-ring"), Map.of());
    assertThat(bare.carries()).isEmpty();
    assertThat(bare.anew()).isEmpty();
    assertThat(bare.firstMetal()).isEmpty();
    assertThat(bare.earlier()).isEmpty();
  }

  @Test
  void the_new_book_says_which_it_was_made_from() {
    JobBook book = settled();
    MadeAgain again = again(book, Map.of(WishKeys.JOB, "For Ida"));
    String begun = book.entries().get(0).at().toString();
    assertThat(again.facts(book.entries(), book.state()).get(0))
        .isEqualTo(new Fact.JobOpened("For Ida", "scroll-and-ring", begun));
    assertThat(again(book, Map.of()).facts(List.of(), book.state()).get(0))
        .isEqualTo(new Fact.JobOpened("A chain", "scroll-and-ring", ""));
  }
}
