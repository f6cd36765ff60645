package linkwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.files.UserSettings;
import linkwright.quantity.Count;
import linkwright.quantity.Read;

/**
 * How the program was asked to start.
 *
 * @param home the user's folder, if named
 * @param window whether a window is wished though there is a terminal
 * @param theme one of {@link UserSettings#THEMES}, if named
 * @param fontSize the window's letters, points, if given
 * @param plain whether lines of text are wished in place of a screen
 */
public record StartOptions(
    Optional<String> home,
    boolean window,
    Optional<String> theme,
    Optional<Integer> fontSize,
    boolean plain) {
  static final StartOptions NONE =
      new StartOptions(Optional.empty(), false, Optional.empty(), Optional.empty(), false);

  private static final List<String> WITH_VALUE = List.of("--home", "--theme", "--font-size");
  private static final List<String> FLAGS = List.of("--window", "--plain");

  /**
   * Reads arguments that do nothing but start the program. They are read by hand, for the command
   * parser takes longer to load than the first screen to show.
   *
   * @return empty if there is anything else among them: then it is a command
   */
  public static Optional<Read<StartOptions>> of(String... arguments) {
    Read<StartOptions> options = Read.good(NONE);
    for (int i = 0; i < arguments.length; i++) {
      String name = arguments[i];
      if (FLAGS.contains(name)) {
        options = options.flatMap(before -> before.with(name, ""));
        continue;
      }
      int equals = name.indexOf('=');
      String option = equals < 0 ? name : name.substring(0, equals);
      if (!WITH_VALUE.contains(option)) {
        return Optional.empty();
      }
      boolean next = equals < 0;
      if (next && i + 1 == arguments.length) {
        return Optional.of(Read.bad(option + " needs a value after it: " + example(option) + "."));
      }
      String value = next ? arguments[++i] : name.substring(equals + 1);
      options = options.flatMap(before -> before.with(option, value));
    }
    return Optional.of(options);
  }

  private static String example(String option) {
    return switch (option) {
      case "--home" -> "--home DIR";
      case "--theme" -> "--theme " + String.join("|", UserSettings.THEMES);
      default -> "--font-size 18";
    };
  }

  private Read<StartOptions> with(String option, String value) {
    return switch (option) {
      case "--window" -> Read.good(new StartOptions(home, true, theme, fontSize, plain));
      case "--plain" -> Read.good(new StartOptions(home, window, theme, fontSize, true));
      case "--home" ->
          value.isBlank()
              ? Read.bad("--home needs the name of a folder: --home DIR.")
              : Read.good(new StartOptions(Optional.of(value), window, theme, fontSize, plain));
      case "--theme" -> {
        String word = value.strip().toLowerCase(Locale.ROOT);
        yield UserSettings.THEMES.contains(word)
            ? Read.good(new StartOptions(home, window, Optional.of(word), fontSize, plain))
            : Read.bad(
                "There is no theme \""
                    + value
                    + "\": take one of "
                    + String.join(", ", UserSettings.THEMES)
                    + ".");
      }
      default -> font(value);
    };
  }

  private Read<StartOptions> font(String value) {
    int points = Count.inDigits(value, 3).orElse(0);
    return points >= UserSettings.SMALLEST_FONT && points <= UserSettings.LARGEST_FONT
        ? Read.good(new StartOptions(home, window, theme, Optional.of(points), plain))
        : Read.bad(
            "Letters cannot be \""
                + value
                + "\" points high: give a whole number from "
                + UserSettings.SMALLEST_FONT
                + " to "
                + UserSettings.LARGEST_FONT
                + ".");
  }
}
