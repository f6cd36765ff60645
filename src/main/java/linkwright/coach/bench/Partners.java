package linkwright.coach.bench;

import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepCounting;

/** What is joined one by one needs something to be joined to: a ring alone joins no links. */
final class Partners {
  private Partners() {}

  /** A kind of piece that the counted one is joined with, of which none has come so far. */
  static Optional<PieceKind> lacking(Model model, AtBench at) {
    if (at.step().counts() != StepCounting.EACH || at.begins() || at.fromRedo()) {
      return Optional.empty();
    }
    JobState state = model.job().orElseThrow().state();
    return at.step().stage().entrySet().stream()
        .filter(each -> !each.getKey().equals(at.piece()))
        .filter(each -> there(state.piles().of(each.getKey()), each.getValue()) == 0)
        .map(each -> each.getKey())
        .findFirst();
  }

  private static int there(Pile pile, Stage stage) {
    return pile.waitingFor(stage) + pile.atOrPast(stage);
  }

  /** That it is so, where the step is shown; empty if nothing lacks or none of its own waits. */
  static String says(Model model, AtBench at) {
    return lacking(model, at)
        .filter(kind -> at.available() > 0)
        .map(kind -> "No " + kind + " is here yet for a " + at.piece() + " to be joined to.")
        .orElse("");
  }

  /** The same as one is counted all the same. */
  static Model counted(Model model, AtBench at) {
    return lacking(model, at)
        .map(kind -> model.trouble("Counted, and no " + kind + " is here for it: {do:undo}?"))
        .orElse(model);
  }
}
