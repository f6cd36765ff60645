package linkwright.view;

import linkwright.coach.BenchHeld;
import linkwright.coach.BookHeld;
import linkwright.coach.CautionsHeld;
import linkwright.coach.Held;
import linkwright.coach.PlanHeld;
import linkwright.coach.ReckonerHeld;
import linkwright.coach.RoundHeld;
import linkwright.coach.TestsHeld;
import linkwright.coach.TimersHeld;
import linkwright.coach.TrayHeld;
import linkwright.coach.TrialHeld;
import linkwright.coach.WeighHeld;
import linkwright.coach.WireHeld;
import linkwright.coach.AtBench;
import linkwright.coach.Model;

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
