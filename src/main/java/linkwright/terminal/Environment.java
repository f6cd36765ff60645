package linkwright.terminal;

import java.io.Console;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.view.Glyphs;

/**
 * What the surroundings tell about terminal, window, colours and characters.
 *
 * @param variables the environment variables
 * @param terminal whether standard input and output are a terminal
 * @param system the name of the operating system, as Java gives it
 */
public record Environment(Map<String, String> variables, boolean terminal, String system) {
  /** Keeps its own copy. */
  public Environment {
    variables = Map.copyOf(variables);
  }

  /** The surroundings of this very program. */
  public static Environment here() {
    return new Environment(System.getenv(), isTerminal(), System.getProperty("os.name", ""));
  }

  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // From Java 22 on there is always a console, and it has this method to tell a terminal.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /** Whether a window can be opened. */
  boolean hasWindows() {
    return isWindows()
        || system.startsWith("Mac")
        || !value("DISPLAY").isEmpty()
        || !value("WAYLAND_DISPLAY").isEmpty();
  }

  /** Whether it takes lines and nothing else, be it a terminal or an editor's pipe. */
  public boolean isDumb() {
    return value("TERM").equals("dumb");
  }

  boolean isWindows() {
    return system.startsWith("Windows");
  }

  /**
   * What characters the terminal draws: all when the locale's encoding is UTF-8. The Linux console
   * decodes UTF-8 but its fonts hold 512 signs at most, and no Braille.
   */
  Glyphs glyphs() {
    return isUtf8() && !value("TERM").equals("linux") ? Glyphs.FULL : Glyphs.ASCII;
  }

  /** Whether the locale says that text is written in UTF-8. */
  public boolean isUtf8() {
    // In this order, the first that is set: POSIX.1-2017, 8.2 Internationalization Variables.
    for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
      if (!value(name).isEmpty()) {
        String locale = value(name).toLowerCase(Locale.ROOT);
        return locale.contains("utf-8") || locale.contains("utf8");
      }
    }
    return false;
  }

  ColourDepth depth() {
    String term = value("TERM");
    if (!value("NO_COLOR").isEmpty() || term.isEmpty() || term.equals("dumb")) {
      return ColourDepth.NONE;
    }
    String colours = value("COLORTERM");
    if (colours.equals("truecolor") || colours.equals("24bit") || term.endsWith("-direct")) {
      return ColourDepth.RGB;
    }
    if (term.contains("256color")) {
      return ColourDepth.INDEXED;
    }
    return term.startsWith("vt") || term.endsWith("-m") ? ColourDepth.NONE : ColourDepth.SIXTEEN;
  }

  /** How many colours the window may show. */
  ColourDepth windowDepth() {
    return value("NO_COLOR").isEmpty() ? ColourDepth.RGB : ColourDepth.NONE;
  }

  /** Dark or light, where the terminal tells its background: 7 and 15 are the two whites. */
  Optional<Look> look() {
    String colours = value("COLORFGBG");
    if (colours.isEmpty()) {
      return Optional.empty();
    }
    String background = colours.substring(colours.lastIndexOf(';') + 1);
    return Optional.of(background.equals("7") || background.equals("15") ? Look.LIGHT : Look.DARK);
  }

  String value(String name) {
    return variables.getOrDefault(name, "");
  }
}
