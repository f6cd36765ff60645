package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.again.Learnt;
import org.junit.jupiter.api.Test;

class LearntTest {
  private final JobBook book = JobBook.scroll(Wishes.common().texts());

  private Learnt closedWith(int links, double lengthMm) {
    OptionalDouble none = OptionalDouble.empty();
    book.enter(new Fact.WireCut(PieceKind.LINK, links, 38));
    for (Stage stage : book.state().piles().of(PieceKind.LINK).stages()) {
      if (!stage.equals(Stage.CUT)) {
        book.enter(
            new Fact.PiecesThrough(Map.of(PieceKind.LINK, links), stage, false, new StepId("any")));
      }
    }
    book.enter(new Fact.WeighedIn(none, OptionalDouble.of(lengthMm), none, none, none, none, none));
    return Learnt.of(book.state(), book.standing());
  }

  @Test
  void a_chain_left_unfinished_says_nothing_of_what_a_link_adds() {
    Learnt learnt = closedWith(1, 60);
    assertThat(learnt.longerMm()).isEmpty();
    assertThat(learnt.linkAddsMm()).isEmpty();
  }

  @Test
  void a_finished_one_does() {
    Plan plan = book.standing().counted().plan().orElseThrow();
    assertThat(closedWith(plan.links(), plan.lengthMm() + 20).linkAddsMm()).isPresent();
  }
}
