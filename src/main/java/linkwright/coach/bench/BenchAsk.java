package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.job.Fact;
import linkwright.routine.Remedy;
import linkwright.routine.StepId;
import linkwright.standing.WaitingPiece;

/** What the bench asks before it goes on. */
public sealed interface BenchAsk {
  /** Nothing. */
  record Nothing() implements BenchAsk {}

  /**
   * Why pieces failed.
   *
   * @param scrap whether they are scrapped; otherwise they are done again
   * @param count how many
   * @param choices the reasons to choose from, numbered from 1
   * @param counted where they were counted as through just now
   */
  record Why(boolean scrap, int count, List<Remedy> choices, Optional<JustCounted> counted)
      implements BenchAsk {
    public Why {
      choices = List.copyOf(choices);
    }
  }

  /** Whether the piece just counted is to be redone: its key was held. */
  record Repeated() implements BenchAsk {}

  /**
   * Whether to go on past what is left behind.
   *
   * @param told what is left, without a full stop
   * @param there where the first answer leads
   * @param back the step it leads to; empty where it is another place
   * @param facts what is entered if she goes on
   */
  record Passing(String told, String there, Optional<StepId> back, List<Fact> facts)
      implements BenchAsk {
    public Passing {
      facts = List.copyOf(facts);
    }
  }

  /** When the pieces of a redo pile are to be redone. */
  record WhenAgain(WaitingPiece pile) implements BenchAsk {}

  /** Nothing is asked: on the way to that step, the cards that are due before it are seen first. */
  record Onto(StepId step) implements BenchAsk {}

  /** Whether so many are cut, which is out of reason: the same key once more says so. */
  record Sure(int count) implements BenchAsk {}

  /** Whether it is clean so early: the same key once more says so. */
  record Early() implements BenchAsk {}

  /** Nothing is asked: another step is looked at, and nothing changes by it. */
  record Looking(StepId step) implements BenchAsk {}
}
