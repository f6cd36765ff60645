package linkwright.exchange;

import java.time.Instant;
import java.util.Optional;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.job.StagesByKind;
import linkwright.job.WireLedger;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * The piles as row after row of tallies would leave them: a row that moves more pieces than there
 * are is no row to be entered.
 */
final class Tallied {
  private final StagesByKind stages;
  private JobState state;
  private int rows;

  Tallied(JobState state, StagesByKind stages) {
    this.state = state;
    this.stages = stages;
  }

  /** The wire as the rows so far leave it. */
  WireLedger wire() {
    return state.wire();
  }

  /** Counts the row's entry; answers with what is wrong, if the pieces are not there. */
  Optional<String> after(Fact fact, PieceKind kind, Stage stage, TallyRow row) {
    Pile pile = state.piles().of(kind, row.size());
    Pile all = row.size().isEmpty() ? state.piles().of(kind) : pile;
    boolean begins = row.what().equals(TakenIn.THROUGH) && all.begins(stage) && !row.fromRedo();
    int there = row.fromRedo() ? all.redoAt(stage) : all.waitingFor(stage);
    if (!begins && row.count() > there) {
      return Optional.of(
          (there == 0 ? "no " : "only " + there + " of the ")
              + kind
              + " pieces "
              + (row.fromRedo() ? "are to be done again at “" : "wait for “")
              + stage
              + "” by then, not "
              + row.count()
              + ": enter first what brings them there.");
    }
    state = state.after(new Entry(++rows, Instant.EPOCH, "take-in", fact), stages);
    return Optional.empty();
  }

  /**
   * What a row says of its pieces.
   *
   * @param what through, redo or scrap
   * @param count how many
   * @param fromRedo whether they were to be done again at that stage
   * @param size which size of link; empty where none is said
   */
  record TallyRow(String what, int count, boolean fromRedo, String size) {}
}
