package linkwright.view;

import linkwright.coach.bench.BenchHeld;
import linkwright.coach.book.BookHeld;
import linkwright.coach.cautions.CautionsHeld;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Model;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.reckoner.ReckonerHeld;
import linkwright.coach.round.RoundHeld;
import linkwright.coach.testpieces.TestsHeld;
import linkwright.coach.timers.TimersHeld;
import linkwright.coach.tray.TrayHeld;
import linkwright.coach.trial.TrialHeld;
import linkwright.coach.weigh.WeighHeld;
import linkwright.coach.wire.WireHeld;

/** What a screen is called at its head. */
final class Titles {
  private Titles() {}

  static String of(Model model) {
    Held screen = model.held();
    if (screen instanceof TrayHeld) {
      return "the tray";
    }
    if (screen instanceof RoundHeld) {
      return "the way round";
    }
    if (screen instanceof PlanHeld) {
      return "plan";
    }
    if (screen instanceof TestsHeld) {
      return "test pieces";
    }
    if (screen instanceof TrialHeld) {
      return "trial length";
    }
    if (screen instanceof BenchHeld) {
      return AtBench.of(model)
          .map(at -> "step " + at.number() + " of " + at.routine().steps().size())
          .orElse("bench");
    }
    if (screen instanceof WireHeld) {
      return "wire";
    }
    if (screen instanceof BookHeld) {
      return "book";
    }
    if (screen instanceof CautionsHeld) {
      return "cautions";
    }
    if (screen instanceof TimersHeld) {
      return "timers";
    }
    if (screen instanceof ReckonerHeld) {
      return "reckoner";
    }
    return screen instanceof WeighHeld ? "weigh in" : "all keys";
  }
}
