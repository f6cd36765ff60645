package linkwright.coach;

import java.util.Optional;
import linkwright.routine.Remedy;

/** The bench's screen with one thing of it changed. */
final class BenchScreens {
  private BenchScreens() {}

  /** Nothing typed, nothing asked, no remedy shown. */
  static Screen.Bench plain(Screen.Bench screen) {
    return new Screen.Bench(
        "", new BenchAsk.Nothing(), screen.opening(), screen.part(), Optional.empty(), 0);
  }

  static Screen.Bench digits(Screen.Bench screen, String digits) {
    return new Screen.Bench(
        digits, screen.ask(), screen.opening(), screen.part(), screen.remedy(), screen.cardPage());
  }

  static Screen.Bench asking(Screen.Bench screen, BenchAsk ask) {
    return new Screen.Bench("", ask, screen.opening(), screen.part(), Optional.empty(), 0);
  }

  static Screen.Bench opening(Screen.Bench screen, Optional<String> step) {
    // A step that opens leaves no question; an entry kept meanwhile takes none away.
    return new Screen.Bench(
        "",
        step.isPresent() ? new BenchAsk.Nothing() : screen.ask(),
        step,
        0,
        step.isPresent() ? Optional.empty() : screen.remedy(),
        0);
  }

  static Screen.Bench nextPart(Screen.Bench screen) {
    return new Screen.Bench(
        screen.digits(),
        screen.ask(),
        screen.opening(),
        screen.part() + 1,
        screen.remedy(),
        screen.cardPage());
  }

  static Screen.Bench remedy(Screen.Bench screen, Remedy remedy) {
    return new Screen.Bench(
        "", new BenchAsk.Nothing(), screen.opening(), screen.part(), Optional.of(remedy), 0);
  }

  /** The next page of the caution that is to be seen. */
  static Screen.Bench turned(Screen.Bench screen) {
    return new Screen.Bench(
        screen.digits(),
        screen.ask(),
        screen.opening(),
        screen.part(),
        screen.remedy(),
        screen.cardPage() + 1);
  }

  /** The first page, for the next caution. */
  static Screen.Bench firstPage(Screen.Bench screen) {
    return new Screen.Bench(
        screen.digits(), screen.ask(), screen.opening(), screen.part(), screen.remedy(), 0);
  }
}
