package linkwright.terminal;

import java.io.IOException;
import java.util.Optional;

/** Chooses where to show the program. */
public final class Displays {
  private Displays() {}

  /** What may be chosen. */
  enum Kind {
    TERMINAL,
    WINDOW,
    PLAIN
  }

  /**
   * Opens the terminal if there is one, else a window if one can be opened; a window first where
   * the user wished for it. Empty when there is neither: then only plain lines can be written.
   */
  public static Optional<Display> choose(Environment environment, Wishes wishes) {
    Look look = wishes.look().or(environment::look).orElse(Look.DARK);
    Kind kind = kind(environment, wishes);
    if (kind == Kind.TERMINAL) {
      try {
        return Optional.of(
            TerminalDisplay.open(environment, Theme.of(look, environment.depth()), wishes.mouse()));
      } catch (IOException e) {
        kind = environment.hasWindows() ? Kind.WINDOW : Kind.PLAIN;
      }
    }
    if (kind == Kind.WINDOW) {
      try {
        return Optional.of(WindowDisplay.open(look, environment.windowDepth(), wishes.fontSize()));
      } catch (IOException e) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** What to try first. */
  static Kind kind(Environment environment, Wishes wishes) {
    // Lanterna can't drive the console of Windows, so there the window it is.
    boolean terminal = environment.terminal() && !environment.isWindows();
    if (environment.hasWindows() && (wishes.window() || !terminal)) {
      return Kind.WINDOW;
    }
    return terminal ? Kind.TERMINAL : Kind.PLAIN;
  }
}
