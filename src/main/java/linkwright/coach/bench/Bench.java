package linkwright.coach.bench;

import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.routine.Caution;

/** What the bench's drawing and the plain walk ask of it. */
public final class Bench {
  private Bench() {}

  /** The step that is open or about to open. */
  public static Optional<AtBench> target(Model model) {
    return BenchGate.target(model);
  }

  /** The caution to be seen first, if one is. */
  public static Optional<Caution> caution(Model model) {
    return BenchGate.caution(model);
  }

  /** What the one key for the common act does at the step that is open. */
  public static Act common(Model model, AtBench at) {
    return BenchPlace.commonAct(model, at);
  }

  /** Whether that can be done at the bench now. */
  public static boolean offers(Model model, Act act) {
    return new BenchPlace().acts(model).contains(act);
  }

  /** Whether nobody is at the bench. */
  public static boolean away(Model model) {
    return BenchPlace.away(model);
  }
}
