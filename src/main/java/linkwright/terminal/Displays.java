package linkwright.terminal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Chooses where to show the program. */
public final class Displays {
  /** The looks are made for backgrounds as far as here: {@code #2b2b2b} and {@code #e8e8e8}. */
  private static final double DARK_UP_TO = 0x2B;

  private static final double LIGHT_FROM = 0xE8;

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
      return Optional.of(
          TerminalDisplay.open(
              environment,
              answers -> Theme.of(look(environment, wishes, answers), environment.depth()),
              wishes.mouse()));
    } catch (IOException unusable) {
      return Optional.empty();
    }
  }

  /** What this terminal answers when it is asked what it can do; nothing where there is none. */
  public static List<String> told(Environment environment) {
    if (!usable(environment)) {
      return List.of();
    }
    List<String> told = new ArrayList<>();
    try (Display asked =
        TerminalDisplay.open(
            environment,
            answers -> {
              told.add(answers.sentence());
              return Theme.of(Look.EITHER, environment.depth());
            },
            false)) {
      Display.GridSize size = asked.size();
      told.add("It is " + size.columns() + " columns wide and " + size.rows() + " rows high.");
    } catch (IOException unusable) {
      told.add("It cannot be taken over: " + unusable.getMessage() + ".");
    }
    return told;
  }

  private static Optional<Display> window(Environment environment, DisplayWishes wishes) {
    try {
      Look look = wishes.look().or(environment::look).orElse(Look.DARK);
      return Optional.of(WindowDisplay.open(look, environment.windowDepth(), wishes.fontSize()));
    } catch (IOException nowhere) {
      return Optional.empty();
    }
  }

  /** As wished, on the background as the terminal told it; where it told none, for either. */
  static Look look(Environment environment, DisplayWishes wishes, TerminalAnswers answers) {
    Optional<Look> ground = answers.backgroundRgb().map(Displays::onGround).or(environment::look);
    if (wishes.look().filter(Look.HIGH_CONTRAST::equals).isPresent()) {
      return ground
          .map(on -> on == Look.LIGHT ? Look.HIGH_CONTRAST_LIGHT : Look.HIGH_CONTRAST)
          .orElse(Look.NO_COLOUR);
    }
    return wishes.look().or(() -> ground).orElse(Look.EITHER);
  }

  /** Dark or light, where colours made for it are legible; else what is legible on both. */
  private static Look onGround(int rgb) {
    double brightness = (0.299 * (rgb >> 16) + 0.587 * (rgb >> 8 & 0xFF) + 0.114 * (rgb & 0xFF));
    return brightness <= DARK_UP_TO
        ? Look.DARK
        : brightness >= LIGHT_FROM ? Look.LIGHT : Look.NO_COLOUR;
  }

  /** Whether there is a terminal that can be driven: Lanterna can't drive that of Windows. */
  private static boolean usable(Environment environment) {
    return environment.terminal() && !environment.isDumb() && !environment.isWindows();
  }

  /** What to try first. */
  static Kind kind(Environment environment, DisplayWishes wishes) {
    boolean terminal = usable(environment);
    boolean lines = environment.terminal() && environment.isDumb() && !environment.isWindows();
    if (environment.hasWindows() && (wishes.window() || !(terminal || lines))) {
      return Kind.WINDOW;
    }
    return terminal ? Kind.TERMINAL : Kind.PLAIN;
  }
}
