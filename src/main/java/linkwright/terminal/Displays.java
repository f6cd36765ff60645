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
   * the user wished for it, and the terminal after all where none opens. Empty when there is
   * neither: then only plain lines can be written.
   */
  public static Optional<Display> choose(Environment environment, DisplayWishes wishes) {
    Kind kind = kind(environment, wishes);
    if (kind == Kind.WINDOW) {
      return window(environment, wishes)
          .or(() -> usable(environment) ? terminal(environment, wishes) : Optional.empty());
    }
    if (kind == Kind.TERMINAL) {
      return terminal(environment, wishes)
          .or(() -> environment.hasWindows() ? window(environment, wishes) : Optional.empty());
    }
    return Optional.empty();
  }

  private static Optional<Display> terminal(Environment environment, DisplayWishes wishes) {
    try {
      Theme theme = Theme.of(look(environment, wishes), environment.depth());
      return Optional.of(TerminalDisplay.open(environment, theme, wishes.mouse()));
    } catch (IOException unusable) {
      return Optional.empty();
    }
  }

  private static Optional<Display> window(Environment environment, DisplayWishes wishes) {
    try {
      Look look = look(environment, wishes);
      return Optional.of(WindowDisplay.open(look, environment.windowDepth(), wishes.fontSize()));
    } catch (IOException nowhere) {
      return Optional.empty();
    }
  }

  private static Look look(Environment environment, DisplayWishes wishes) {
    return wishes.look().or(environment::look).orElse(Look.DARK);
  }

  /** Whether there is a terminal that can be driven: Lanterna can't drive that of Windows. */
  private static boolean usable(Environment environment) {
    return environment.terminal() && !environment.isDumb() && !environment.isWindows();
  }

  /** What to try first. */
  static Kind kind(Environment environment, DisplayWishes wishes) {
    boolean terminal = usable(environment);
    boolean lines = environment.isDumb() && !environment.isWindows();
    if (environment.hasWindows() && (wishes.window() || !(terminal || lines))) {
      return Kind.WINDOW;
    }
    return terminal ? Kind.TERMINAL : Kind.PLAIN;
  }
}
