package linkwright.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;

/** What can be entered since the second format, of the work at the bench and of the job. */
public sealed interface BenchFact extends Fact
    permits BenchFact.HotWorkSaid,
        BenchFact.WatchEnded,
        BenchFact.SittingEnded,
        BenchFact.StepSkipped,
        BenchFact.JointsChecked,
        BenchFact.HoursCorrected,
        BenchFact.RedoPlanned,
        BenchFact.PilePlaced,
        BenchFact.CardSet,
        BenchFact.JobPutAway {

  /**
   * The state of hot work was said, with the words it was said in.
   *
   * @param answers the words that are over with this one, by name, for no clock tells which of two
   *     words came first; absent in older books, whose words have no other order
   * @param of the book that holds these, where it could not be written; empty for the same book
   */
  record HotWorkSaid(
      HotWorkState state, StepId step, String statement, Optional<List<EntryId>> answers, String of)
      implements BenchFact {
    public HotWorkSaid {
      answers = answers.map(List::copyOf);
    }
  }

  /** A fire watch was ended before its time; from: the heat or statement that it began with. */
  record WatchEnded(EntryId from, String why) implements BenchFact {}

  /** The person's sitting ended; her timers go on. */
  record SittingEnded(String person) implements BenchFact {}

  /** A step was passed with nothing done at it. */
  record StepSkipped(StepId step, String why, StepLeft left) implements BenchFact {
    /** With work left there. */
    public StepSkipped(StepId step, String why) {
      this(step, why, StepLeft.OPEN);
    }
  }

  /** Joints of a kind of piece were looked at: so many failed of so many. */
  record JointsChecked(PieceKind piece, int failed, int of, String reason, StepId step)
      implements BenchFact {}

  /** The time spent at a step was put right by hand, s; without a step that of the whole job. */
  record HoursCorrected(StepId step, double wasSeconds, double isSeconds, String why)
      implements BenchFact {}

  /** When the pieces of a redo pile are to be redone. */
  record RedoPlanned(PieceKind piece, Stage stage, Again again) implements BenchFact {}

  /**
   * A pile got a place or a tin, in her own words; redo: the pile to be done again at that stage.
   */
  record PilePlaced(PieceKind piece, Stage stage, boolean redo, String place, String size)
      implements BenchFact {}

  /** The job card was set or changed: customer, promised date, quote, deposit and the like. */
  record CardSet(Map<String, String> card) implements BenchFact {
    public CardSet {
      card = Fact.copy(card);
    }
  }

  /** The job was put away from the tray, or brought back. */
  record JobPutAway(boolean away) implements BenchFact {}
}
