package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;

/** Of what is scrapped or sent back out of a wait, no more is in it. */
class InWaitsWithinTest {
  private static final StepId PICKLE = new StepId("pickle");
  private static final StepId QUENCH = new StepId("quench");
  private static final OnWay FRESH = new OnWay(PieceKind.LINK, Stage.PICKLED, false, "");
  private static final OnWay AGAIN = new OnWay(PieceKind.LINK, Stage.SOLDERED, true, "");
  private static final StagesByKind ORDER =
      routine -> Map.of(PieceKind.LINK, Stage.all(List.of("cut", "soldered", "pickled")));

  private final List<Entry> book = new ArrayList<>();

  private InWaitsWithinTest enter(Fact... facts) {
    for (Fact fact : facts) {
      int number = book.size() + 1;
      book.add(new Entry(number, Instant.ofEpochSecond(number), "bench", fact));
    }
    return this;
  }

  /** How many of that are in each wait of a step, those that went in first before the others. */
  private List<Integer> in(StepId step, OnWay way) {
    return JobState.replay(book, ORDER).course().waits().at(step).stream()
        .map(wait -> wait.of(way))
        .toList();
  }

  private static Fact in(StepId step, Map<OnWay, Integer> what) {
    return new Fact.TimerStarted("Wait", 480, new WaitId("clean"), step, what);
  }

  private static Fact scrapped(int count, Stage stage, boolean redo) {
    return new Fact.PiecesScrapped(PieceKind.LINK, count, stage, redo, "melted");
  }

  /** 6 links, soldered: they wait for the pickle. */
  private InWaitsWithinTest soldered() {
    return enter(
        new Fact.JobOpened("Anklet", "cable"),
        new Fact.WireCut(PieceKind.LINK, 6, 38),
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 6), Stage.SOLDERED, false, new StepId("solder")));
  }

  @Test
  void what_is_scrapped_beside_it_leaves_it_whole() {
    soldered().enter(in(PICKLE, Map.of(FRESH, 4)), scrapped(2, Stage.PICKLED, false));
    assertThat(in(PICKLE, FRESH)).containsExactly(4);
  }

  @Test
  void what_is_scrapped_beyond_that_was_in_it() {
    soldered().enter(in(PICKLE, Map.of(FRESH, 4)), scrapped(3, Stage.PICKLED, false));
    assertThat(in(PICKLE, FRESH)).containsExactly(3);
    enter(scrapped(3, Stage.PICKLED, false));
    assertThat(in(PICKLE, FRESH)).isEmpty();
  }

  /** So that none that is left comes out too early. */
  @Test
  void what_went_in_first_is_taken_as_gone() {
    soldered().enter(in(PICKLE, Map.of(FRESH, 4)), in(PICKLE, Map.of(FRESH, 2)));
    enter(scrapped(3, Stage.PICKLED, false));
    assertThat(in(PICKLE, FRESH)).containsExactly(1, 2);
    enter(scrapped(2, Stage.PICKLED, false));
    assertThat(in(PICKLE, FRESH)).containsExactly(1);
  }

  @Test
  void what_is_done_again_is_counted_by_its_redo_pile() {
    soldered();
    enter(new Fact.PiecesSentBack(PieceKind.LINK, 2, Stage.PICKLED, Stage.SOLDERED, false, "gap"));
    enter(in(QUENCH, Map.of(AGAIN, 2)), in(PICKLE, Map.of(FRESH, 4)));
    assertThat(in(QUENCH, AGAIN)).containsExactly(2);
    enter(scrapped(1, Stage.SOLDERED, true));
    assertThat(in(QUENCH, AGAIN)).containsExactly(1);
    assertThat(in(PICKLE, FRESH)).containsExactly(4);
  }

  @Test
  void each_step_has_its_own_waits() {
    soldered().enter(in(PICKLE, Map.of(FRESH, 4)), in(QUENCH, Map.of()));
    assertThat(in(PICKLE, FRESH)).containsExactly(4);
    assertThat(in(QUENCH, FRESH)).containsExactly(0);
    assertThat(in(new StepId("file"), FRESH)).isEmpty();
  }
}
