package linkwright.coach.bench;

import java.util.Optional;
import linkwright.routine.Remedy;

/** The bench's screen with one thing of it changed. */
final class BenchScreens {
  private BenchScreens() {}

  /** Nothing typed, nothing asked, no remedy shown. */
  static BenchHeld plain(BenchHeld screen) {
    return new BenchHeld(
        "", new BenchAsk.Nothing(), screen.part(), Optional.empty(), 0, screen.drawn());
  }

  static BenchHeld digits(BenchHeld screen, String digits) {
    return new BenchHeld(
        digits, screen.ask(), screen.part(), screen.remedy(), screen.cardPage(), screen.drawn());
  }

  static BenchHeld asking(BenchHeld screen, BenchAsk ask) {
    return new BenchHeld("", ask, screen.part(), Optional.empty(), 0, 0);
  }

  /** An entry was kept: a number that was not in it stays, and a question asked meanwhile. */
  static BenchHeld kept(BenchHeld screen) {
    return new BenchHeld(screen.digits(), screen.ask(), 0, screen.remedy(), 0, screen.drawn());
  }

  static BenchHeld part(BenchHeld screen, int part) {
    return new BenchHeld(
        screen.digits(), screen.ask(), part, screen.remedy(), screen.cardPage(), screen.drawn());
  }

  /** The next drawing of the step; after the last its texts again. */
  static BenchHeld nextDrawn(BenchHeld screen, int all) {
    int next = screen.drawn() >= all ? 0 : screen.drawn() + 1;
    return new BenchHeld(
        screen.digits(), screen.ask(), 0, screen.remedy(), screen.cardPage(), next);
  }

  static BenchHeld remedy(BenchHeld screen, Remedy remedy) {
    return new BenchHeld("", new BenchAsk.Nothing(), screen.part(), Optional.of(remedy), 0, 0);
  }

  /** Another page of the caution that is to be seen. */
  static BenchHeld turned(BenchHeld screen, int page) {
    return new BenchHeld(
        screen.digits(), screen.ask(), screen.part(), screen.remedy(), page, screen.drawn());
  }

  /** The first page, for the next caution. */
  static BenchHeld firstPage(BenchHeld screen) {
    return new BenchHeld(
        screen.digits(), screen.ask(), screen.part(), screen.remedy(), 0, screen.drawn());
  }
}
