package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import linkwright.plan.Wishes;
import linkwright.routine.AfterFault;
import linkwright.routine.PieceKind;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;

class FailedPiecesTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");

  @Test
  void redo_and_scrap_of_one_reason_are_one_line_and_what_is_struck_is_none() {
    List<FailedPieces> failed =
        FailedPieces.in(
            List.of(
                entry(1, scrapped(1, "melted")),
                entry(2, sentBack(2, "too cool")),
                entry(3, scrapped(1, "too cool")),
                entry(4, scrapped(5, "twisted")),
                entry(5, new Fact.Struck(new EntryId("bench", 4), "undone"))));
    assertThat(failed)
        .containsExactly(
            line("too cool", 2, 1, MORNING.plusSeconds(3)),
            line("melted", 0, 1, MORNING.plusSeconds(1)));
  }

  @Test
  void a_piece_that_went_back_is_told_another_cure_than_one_that_is_lost() {
    Routine rope = Wishes.LIBRARY.routines().get("rope");
    FailedPieces back = line("twisted", 1, 0);
    FailedPieces lost = line("twisted", 0, 1);
    FailedPieces both = line("twisted", 2, 3);
    assertThat(back.cures(rope))
        .extracting(Remedy::then)
        .isNotEmpty()
        .containsOnly(AfterFault.REDO);
    assertThat(lost.cures(rope))
        .extracting(Remedy::then)
        .isNotEmpty()
        .containsOnly(AfterFault.SCRAP);
    assertThat(both.cures(rope)).containsAll(back.cures(rope)).containsAll(lost.cures(rope));
    assertThat(line("dirty", 0, 1).cures(rope)).isEmpty();
  }

  private static FailedPieces line(String reason, int redo, int scrap) {
    return new FailedPieces(PieceKind.LINK, "", Stage.JOINED, reason, redo, scrap, MORNING);
  }

  private static FailedPieces line(String reason, int redo, int scrap, Instant last) {
    return new FailedPieces(PieceKind.LINK, "", Stage.SOLDERED, reason, redo, scrap, last);
  }

  private static Fact scrapped(int count, String reason) {
    return new Fact.PiecesScrapped(PieceKind.LINK, count, Stage.SOLDERED, false, reason);
  }

  private static Fact sentBack(int count, String reason) {
    return new Fact.PiecesSentBack(
        PieceKind.LINK, count, Stage.SOLDERED, Stage.SOLDERED, false, reason);
  }

  private static Entry entry(int number, Fact fact) {
    return new Entry(number, MORNING.plusSeconds(number), "bench", fact);
  }
}
