package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.job.StagesByKind;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Counts of what is still to do where no piece is ever lost: as many blanks as lack, neither more
 * nor fewer. By hand.
 */
class NothingLostCountTest {
  private static Pile pile(int cut, int checked, int redo, String... stages) {
    StagesByKind order = routine -> Map.of(PieceKind.LINK, Stage.all(List.of(stages)));
    List<Fact> facts = new ArrayList<>(List.of(new Fact.JobOpened("a", "r")));
    if (cut > 0) {
      facts.add(new Fact.WireCut(PieceKind.LINK, cut, 38));
    }
    for (int i = 1; i < stages.length && checked > 0; i++) {
      facts.add(
          new Fact.PiecesThrough(
              Map.of(PieceKind.LINK, checked), new Stage(stages[i]), false, new StepId("a")));
    }
    if (redo > 0) {
      Stage first = new Stage(stages[1]);
      facts.add(new Fact.PiecesSentBack(PieceKind.LINK, redo, first, first, false, "gap"));
    }
    List<Entry> book = new ArrayList<>();
    for (Fact fact : facts) {
      book.add(new Entry(book.size() + 1, Instant.ofEpochSecond(book.size()), "bench", fact));
    }
    return JobState.replay(book, order).piles().of(PieceKind.LINK);
  }

  /** wanted, cut, checked, sent back: to cut, good for the chain, over, more, in work. */
  @ParameterizedTest
  @CsvSource({
    "10, 0, 0, 0, 10, 0, 0, 10, 0",
    "10, 4, 0, 0, 6, 0, 0, 10, 4",
    "10, 4, 3, 0, 6, 3, 0, 7, 1",
    "10, 4, 3, 1, 6, 3, 0, 7, 1",
    "10, 10, 9, 0, 0, 9, 0, 1, 1",
    "10, 10, 10, 0, 0, 10, 0, 0, 0",
    "10, 12, 11, 0, 0, 10, 1, 0, 1",
    "0, 2, 1, 0, 0, 0, 1, 0, 1",
  })
  void as_many_blanks_are_cut_as_lack(
      int wanted,
      int cut,
      int checked,
      int redo,
      int toCut,
      int forChain,
      int over,
      int more,
      int inWork) {
    StillToDo left =
        StillToDo.of(wanted, pile(cut, checked, redo, "cut", "formed", "checked"), 0, 0.9, 50);
    assertThat(left.toCut()).hasValue(toCut);
    assertThat(left.toCutOrAsMany()).isEqualTo(toCut);
    assertThat(left.toCutBySize()).containsExactly(toCut);
    assertThat(left.leastBySize()).containsExactly(toCut);
    assertThat(left.spares()).as("none are lost").isZero();
    assertThat(left.goodForChain()).isEqualTo(forChain);
    assertThat(left.over()).isEqualTo(over);
    assertThat(left.more()).isEqualTo(more);
    assertThat(left.inWork()).isEqualTo(inWork);
    assertThat(left.redo()).isEqualTo(redo);
    assertThat(left.canCut()).isEqualTo(50);
  }

  /** A piece with nothing done to it but cutting is good as soon as it is cut. */
  @Test
  void of_pieces_that_are_only_cut_each_is_good_at_once() {
    StillToDo left = StillToDo.of(10, pile(4, 0, 0, "cut"), 0, 0.9, 50);
    assertThat(left.good()).isEqualTo(4);
    assertThat(left.toCut()).hasValue(6);
    assertThat(StillToDo.of(10, pile(4, 0, 0, "cut"), 0.2, 0.9, 50).spares()).isPositive();
    assertThat(StillToDo.of(10, pile(0, 0, 0, "cut"), 1, 0.9, 50).toCut()).isEmpty();
  }

  @Test
  void where_no_number_is_enough_as_many_are_cut_as_lack() {
    StillToDo hopeless = StillToDo.of(5, pile(2, 0, 0, "cut", "formed", "checked"), 1, 0.9, 50);
    assertThat(hopeless.toCut()).isEmpty();
    assertThat(hopeless.toCutOrAsMany()).isEqualTo(3);
    assertThat(hopeless.spares()).isZero();
  }

  /** Of 40 of which a tenth is usually lost more are cut than 40, and the rest are its spares. */
  @Test
  void spares_are_what_is_cut_beyond_what_lacks() {
    StillToDo left = StillToDo.of(40, pile(0, 0, 0, "cut", "formed", "checked"), 0.1, 0.9, 50);
    assertThat(left.toCut().orElseThrow()).isGreaterThanOrEqualTo(44);
    assertThat(left.spares()).isEqualTo(left.toCut().orElseThrow() - 40);
    assertThat(left.lossShare()).isCloseTo(0.1, Offset.offset(1e-9));
  }

  @Test
  void a_closed_job_has_nothing_to_cut_and_all_else_as_it_was() {
    StillToDo left = StillToDo.of(40, pile(7, 3, 1, "cut", "formed", "checked"), 0.1, 0.9, 50);
    StillToDo closed = left.closed();
    assertThat(closed.toCut()).hasValue(0);
    assertThat(closed.more()).isEqualTo(37);
    assertThat(closed.inWork()).isEqualTo(4);
    assertThat(closed.lossShare()).isEqualTo(left.lossShare());
  }

  /** A clasp: at a loss of a tenth one is begun, at a loss of six in ten spares are. */
  @Test
  void a_piece_made_by_itself_has_a_spare_only_where_it_fails_as_often_as_not() {
    Pile none = pile(0, 0, 0, "cut", "formed", "checked");
    assertThat(StillToDo.of(1, none, 0.1, 0.9, 50).toCut().orElseThrow()).isGreaterThan(1);
    assertThat(StillToDo.of(1, none, 0.1, 0.9, 50).madeAnew().toCut()).hasValue(1);
    assertThat(StillToDo.of(1, none, 0.6, 0.9, 50).madeAnew().toCut().orElseThrow())
        .isGreaterThan(1);
    Pile begun = pile(1, 0, 0, "cut", "formed", "checked");
    assertThat(StillToDo.of(1, begun, 0.1, 0.9, 50).madeAnew().toCut()).hasValue(0);
    assertThat(StillToDo.of(3, begun, 0.1, 0.9, 50).madeAnew().toCut()).hasValue(2);
  }

  /** Six wanted, a tenth lost: 0.6 are reckoned lost, and a spare is begun. */
  @Test
  void of_several_a_spare_is_begun_once_half_a_one_is_reckoned_lost() {
    Pile none = pile(0, 0, 0, "cut", "formed", "checked");
    assertThat(StillToDo.of(4, none, 0.1, 0.9, 50).madeAnew().toCut()).hasValue(4);
    assertThat(StillToDo.of(6, none, 0.1, 0.9, 50).madeAnew().toCut().orElseThrow())
        .isGreaterThan(6);
  }
}
