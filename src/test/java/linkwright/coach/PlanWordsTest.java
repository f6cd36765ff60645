package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.kernel.drawn.PlanWords;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.JobBook;
import linkwright.standing.Standing;
import org.junit.jupiter.api.Test;

class PlanWordsTest {
  private static String blanks(JobBook book) {
    return PlanWords.of(book.standing(), UnitStyle.METRIC).get("blanks");
  }

  private static int toCut(JobBook book) {
    return book.standing().left().get(PieceKind.LINK).toCut().orElseThrow();
  }

  @Test
  void the_blanks_of_a_step_are_those_still_to_cut_as_the_bench_counts_them() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    Standing planned = book.standing();
    assertThat(blanks(book))
        .isEqualTo("" + planned.counted().plan().orElseThrow().blanksToCut())
        .isEqualTo("" + toCut(book));

    book.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.empty(), 50, 0, ""));
    book.enter(new Fact.TrialChosen(book.entries().get(2).id()));
    assertThat(toCut(book)).isLessThan(planned.left().get(PieceKind.LINK).toCut().orElseThrow());
    assertThat(blanks(book)).isEqualTo("" + toCut(book));
  }

  @Test
  void once_none_is_left_to_cut_it_says_so() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 60, 38.1));
    book.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 60), Stage.CUT, false, new StepId("cut-blanks")));
    assertThat(toCut(book)).isZero();
    assertThat(blanks(book)).isEqualTo("none");
  }
}
