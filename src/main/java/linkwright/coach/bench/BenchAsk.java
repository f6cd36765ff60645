package linkwright.coach.bench;

import java.util.List;
import linkwright.routine.Remedy;

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
   */
  record Why(boolean scrap, int count, List<Remedy> choices) implements BenchAsk {
    public Why {
      choices = List.copyOf(choices);
    }
  }

  /** Whether the piece just counted is to be done again: its key was held. */
  record Repeated() implements BenchAsk {}
}
