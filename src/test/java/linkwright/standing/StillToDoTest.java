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
import org.junit.jupiter.api.Test;

/**
 * What is still to do, entry after entry. The figures of the main scenario, 27 links, 9 made, 19
 * more cut, 6 joints done again, are common practice, no source.
 */
class StillToDoTest {
  private static final StagesByKind ORDER =
      routine ->
          Map.of(
              PieceKind.LINK,
              Stage.all(List.of("cut", "formed", "soldered", "pickled", "checked", "trued")));
  private static final double USUAL_LOSS = 0.05;

  private final List<Entry> book = new ArrayList<>();

  StillToDoTest() {
    enter(new Fact.JobOpened("a chain", "r"));
  }

  private void enter(Fact fact) {
    book.add(new Entry(book.size() + 1, Instant.ofEpochSecond(book.size()), "bench", fact));
  }

  private void cut(int count) {
    enter(new Fact.WireCut(PieceKind.LINK, count, 38.1));
  }

  private void through(int count, boolean redo, String... stages) {
    for (String stage : stages) {
      enter(
          new Fact.PiecesThrough(
              Map.of(PieceKind.LINK, count), new Stage(stage), redo, new StepId(stage)));
    }
  }

  private StillToDo left(int wanted, int canCut) {
    Pile pile = JobState.replay(book, ORDER).piles().of(PieceKind.LINK);
    return StillToDo.of(wanted, pile, USUAL_LOSS, 0.9, canCut);
  }

  @Test
  void nine_made_and_nineteen_more_cut_of_which_six_joints_fail_and_are_done_again() {
    cut(9);
    through(9, false, "formed", "soldered", "pickled", "checked");
    StillToDo nine = left(27, 40);
    assertThat(nine.good()).isEqualTo(9);
    assertThat(nine.more()).isEqualTo(18);
    assertThat(nine.inWork()).isZero();
    assertThat(nine.toCut().orElseThrow()).isBetween(18, 21);

    cut(19);
    through(19, false, "formed", "soldered", "pickled");
    through(13, false, "checked");
    enter(new Fact.PiecesSentBack(PieceKind.LINK, 6, Stage.CHECKED, Stage.SOLDERED, false, "gap"));
    StillToDo sixBack = left(27, 21);
    assertThat(sixBack.good()).isEqualTo(22);
    assertThat(sixBack.redo()).isEqualTo(6);
    assertThat(sixBack.inWork()).as("what is to be done again is not lost").isEqualTo(6);
    assertThat(sixBack.scrapped()).isZero();
    assertThat(sixBack.toCut()).hasValue(0);

    through(6, true, "soldered");
    through(6, false, "pickled", "checked");
    StillToDo done = left(27, 21);
    assertThat(done.good()).as("one spare").isEqualTo(28);
    assertThat(done.more()).isZero();
    assertThat(done.redo()).isZero();
  }

  @Test
  void joints_done_again_do_not_make_more_blanks_wanted_but_lost_links_do() {
    cut(10);
    through(10, false, "formed", "soldered", "pickled");
    int before = left(27, 40).toCut().orElseThrow();
    enter(new Fact.PiecesSentBack(PieceKind.LINK, 4, Stage.CHECKED, Stage.SOLDERED, false, "gap"));
    assertThat(left(27, 40).toCut()).hasValue(before);
    enter(new Fact.PiecesScrapped(PieceKind.LINK, 4, Stage.SOLDERED, true, "melted"));
    assertThat(left(27, 40).toCut().orElseThrow()).isGreaterThanOrEqualTo(before + 4);
  }

  @Test
  void a_scrapped_link_is_told_beside_those_that_came_through_and_not_judged_yet() {
    cut(64);
    through(64, false, "formed");
    through(31, false, "soldered");
    enter(new Fact.PiecesScrapped(PieceKind.LINK, 2, new Stage("soldered"), false, "melted"));
    StillToDo left = left(58, 40);
    assertThat(left.lossShare()).as("2 of the 33 that were soldered").isBetween(0.04, 0.09);
    assertThat(left.toCut().orElseThrow()).isBetween(0, 8);
  }

  @Test
  void for_a_kind_that_is_never_checked_what_is_finished_is_good() {
    StagesByKind plain = routine -> Map.of(PieceKind.LINK, Stage.all(List.of("cut", "coiled")));
    cut(3);
    through(2, false, "coiled");
    Pile pile = JobState.replay(book, plain).piles().of(PieceKind.LINK);
    assertThat(StillToDo.of(3, pile, USUAL_LOSS, 0.9, 0).good()).isEqualTo(2);
  }

  @Test
  void where_every_piece_is_usually_lost_no_number_is_enough() {
    Pile pile = JobState.replay(book, ORDER).piles().of(PieceKind.LINK);
    StillToDo hopeless = StillToDo.of(5, pile, 1, 0.9, 100);
    assertThat(hopeless.toCut()).isEmpty();
  }
}
