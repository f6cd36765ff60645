package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.hands.Hands;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.again.Learnt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How often a joint goes back, as the last job showed, of each kind by itself. */
class RedosTest {
  private static void through(JobBook book, PieceKind kind, Stage stage, int count) {
    book.enter(new Fact.PiecesThrough(Map.of(kind, count), stage, false, new StepId("any")));
  }

  private static void back(
      JobBook book, PieceKind kind, Stage from, Stage to, int count, String why) {
    book.enter(new Fact.PiecesSentBack(kind, count, from, to, false, why));
    book.enter(new Fact.PiecesThrough(Map.of(kind, count), to, true, new StepId("any")));
  }

  /** Nine links of which six joints went back, three before they came through, and ten rings. */
  private static JobBook earlier() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 9, 38));
    book.enter(new Fact.WireCut(PieceKind.RING, 10, 12));
    through(book, PieceKind.LINK, new Stage("annealed"), 9);
    through(book, PieceKind.LINK, new Stage("formed"), 9);
    through(book, PieceKind.LINK, Stage.SOLDERED, 6);
    back(book, PieceKind.LINK, Stage.SOLDERED, Stage.SOLDERED, 3, "gap");
    back(book, PieceKind.LINK, new Stage("pickled"), Stage.SOLDERED, 3, "open");
    through(book, PieceKind.LINK, new Stage("pickled"), 9);
    through(book, PieceKind.RING, Stage.JOINED, 9);
    back(book, PieceKind.RING, Stage.JOINED, Stage.JOINED, 1, "gap");
    return book;
  }

  private static Hands hands() {
    JobBook book = earlier();
    return Hands.of(List.of(JobBook.HANDBOOK.taught("a", book.entries(), book.state())), Set.of());
  }

  @Test
  void the_share_is_one_of_tries() {
    assertThat(hands().redoShare(PieceKind.LINK).orElseThrow())
        .isCloseTo(6 / 15.0, Offset.offset(1e-9));
    assertThat(hands().redoShare(PieceKind.RING).orElseThrow())
        .isCloseTo(1 / 11.0, Offset.offset(1e-9));
  }

  @Test
  void the_same_chain_again_expects_about_as_many() {
    Handbook taught = JobBook.HANDBOOK.with(hands());
    Map<PieceKind, StillToDo> left =
        Map.of(
            PieceKind.LINK, wanted(9, PieceKind.LINK), PieceKind.RING, wanted(10, PieceKind.RING));
    Redos redos =
        Redos.of(
            taught.routine("scroll-and-ring"),
            JobBook.scroll(Wishes.common().texts()).state(),
            left,
            taught);
    assertThat(redos.expected().orElseThrow()).isBetween(6.0, 9.0);
    assertThat(redos.perJoint() * 19).isCloseTo(redos.expected().orElseThrow(), Offset.offset(0.1));
  }

  private static StillToDo wanted(int pieces, PieceKind kind) {
    return StillToDo.of(
        pieces, JobBook.scroll(Wishes.common().texts()).state().piles().of(kind), 0.05, 0.9, 99);
  }

  @Test
  void a_reason_that_nobody_gave_is_not_named() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 9, 38));
    book.enter(new Fact.PiecesScrapped(PieceKind.LINK, 2, new Stage("annealed"), false, "", ""));
    Learnt learnt = Learnt.of(book.state(), book.standing());
    assertThat(learnt.lost()).isEqualTo(2);
    assertThat(learnt.lostFor()).isEmpty();
  }

  @Test
  void on_a_tie_both_reasons_are_named_in_one_order() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 9, 38));
    through(book, PieceKind.LINK, new Stage("annealed"), 9);
    through(book, PieceKind.LINK, new Stage("formed"), 9);
    back(book, PieceKind.LINK, Stage.SOLDERED, Stage.SOLDERED, 2, "open");
    back(book, PieceKind.LINK, Stage.SOLDERED, Stage.SOLDERED, 2, "gap");
    assertThat(Learnt.of(book.state(), book.standing()).againFor()).isEqualTo("gap and open");
  }
}
