package linkwright.coach.bench;

import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;

/** What the plain walk and a job as text ask of the bench. */
public final class Bench {
  private Bench() {}

  /** The step that is open, whatever is to be seen or answered before it. */
  public static Optional<Content> step(Model model) {
    return AtBench.of(model)
        .map(at -> new Content(BenchContent.title(at), StepContent.of(model, BenchHeld.PLAIN, at)));
  }

  /** Whether nobody is at the bench. */
  public static boolean away(Model model) {
    return BenchPlace.away(model);
  }
}
