package linkwright.view;

import linkwright.coach.AtBench;
import linkwright.coach.Model;
import linkwright.coach.Screen;

/** What a screen is called at its head. */
final class Titles {
  private Titles() {}

  static String of(Model model) {
    Screen screen = model.screen();
    if (screen instanceof Screen.Tray) {
      return "the tray";
    }
    if (screen instanceof Screen.Round) {
      return "the way round";
    }
    if (screen instanceof Screen.Plan) {
      return "plan";
    }
    if (screen instanceof Screen.Tests) {
      return "test pieces";
    }
    if (screen instanceof Screen.Trial) {
      return "trial length";
    }
    if (screen instanceof Screen.Bench) {
      return AtBench.of(model)
          .map(at -> "step " + at.number() + " of " + at.routine().steps().size())
          .orElse("bench");
    }
    if (screen instanceof Screen.Wire) {
      return "wire";
    }
    if (screen instanceof Screen.Book) {
      return "book";
    }
    if (screen instanceof Screen.Cautions) {
      return "cautions";
    }
    if (screen instanceof Screen.TimerList) {
      return "timers";
    }
    if (screen instanceof Screen.Reckoner) {
      return "reckoner";
    }
    return screen instanceof Screen.WeighIn ? "weigh in" : "all keys";
  }
}
