package linkwright.coach;

import java.util.Optional;
import linkwright.routine.Remedy;

/** The bench's screen with one thing of it changed. */
final class BenchScreens {
  private BenchScreens() {}

  /** Nothing typed, nothing asked, no remedy shown. */
  static Screen.Bench plain(Screen.Bench screen) {
    return new Screen.Bench(
        "", new BenchAsk.Nothing(), screen.opening(), screen.detail(), Optional.empty());
  }

  static Screen.Bench digits(Screen.Bench screen, String digits) {
    return new Screen.Bench(
        digits, screen.ask(), screen.opening(), screen.detail(), screen.remedy());
  }

  static Screen.Bench asking(Screen.Bench screen, BenchAsk ask) {
    return new Screen.Bench("", ask, screen.opening(), screen.detail(), Optional.empty());
  }

  static Screen.Bench opening(Screen.Bench screen, Optional<String> step) {
    return new Screen.Bench(
        "",
        new BenchAsk.Nothing(),
        step,
        false,
        step.isPresent() ? Optional.empty() : screen.remedy());
  }

  static Screen.Bench detail(Screen.Bench screen) {
    return new Screen.Bench(
        screen.digits(), screen.ask(), screen.opening(), !screen.detail(), screen.remedy());
  }

  static Screen.Bench remedy(Screen.Bench screen, Remedy remedy) {
    return new Screen.Bench(
        "", new BenchAsk.Nothing(), screen.opening(), screen.detail(), Optional.of(remedy));
  }
}
