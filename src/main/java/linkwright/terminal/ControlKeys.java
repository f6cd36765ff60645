package linkwright.terminal;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.keys.Key;

/**
 * What the control sequences of a keyboard mean. The sequences are those of xterm's "Control
 * Sequences" document, with the forms that other terminals use for Home, End and the keypad.
 */
final class ControlKeys {
  private static final Pattern CLICK = Pattern.compile("<(\\d{1,3});(\\d{1,5});(\\d{1,5})");
  private static final String KEYPAD = "jklmnopqrstuvwxy";
  private static final String KEYPAD_TYPES = "*+,-./0123456789";

  private ControlKeys() {}

  /** The input that ESC [, parameters and a final letter mean; empty when unknown. */
  static Optional<Input> read(String parameters, char last) {
    if (last == 'M' || last == 'm') {
      return click(parameters, last);
    }
    if (last == '~') {
      return numbered(parameters);
    }
    // Alt, Ctrl or both with a sideways arrow (ESC [ 1 ; 5 D) jump a word; else a modifier makes
    // no other key of an arrow.
    if (parameters.matches("1;[3-8]") && (last == 'C' || last == 'D')) {
      return pressed(Key.of(last == 'C' ? Key.Kind.WORD_RIGHT : Key.Kind.WORD_LEFT));
    }
    return parameters.matches("(1(;\\d{1,2})?)?") ? lettered(last) : Optional.empty();
  }

  /** The input that ESC O and a letter mean; empty when unknown. */
  static Optional<Input> keypad(char letter) {
    int typed = KEYPAD.indexOf(letter);
    if (typed >= 0) {
      return pressed(Key.of(KEYPAD_TYPES.substring(typed, typed + 1)));
    }
    return letter == 'M' ? pressed(Key.of(Key.Kind.ENTER)) : lettered(letter);
  }

  private static Optional<Input> lettered(char letter) {
    return switch (letter) {
      case 'A' -> pressed(Key.of(Key.Kind.UP));
      case 'B' -> pressed(Key.of(Key.Kind.DOWN));
      case 'C' -> pressed(Key.of(Key.Kind.RIGHT));
      case 'D' -> pressed(Key.of(Key.Kind.LEFT));
      case 'H' -> pressed(Key.of(Key.Kind.HOME));
      case 'F' -> pressed(Key.of(Key.Kind.END));
      case 'Z' -> pressed(Key.of(Key.Kind.BACK_TAB));
      default -> Optional.empty();
    };
  }

  private static Optional<Input> numbered(String parameters) {
    int end = parameters.indexOf(';');
    return switch (end < 0 ? parameters : parameters.substring(0, end)) {
      case "1", "7" -> pressed(Key.of(Key.Kind.HOME));
      case "4", "8" -> pressed(Key.of(Key.Kind.END));
      case "3" -> pressed(Key.of(Key.Kind.DELETE));
      case "5" -> pressed(Key.of(Key.Kind.PAGE_UP));
      case "6" -> pressed(Key.of(Key.Kind.PAGE_DOWN));
      default -> Optional.empty();
    };
  }

  private static Optional<Input> click(String parameters, char last) {
    Matcher told = CLICK.matcher(parameters);
    if (last != 'M' || !told.matches() || !told.group(1).equals("0")) {
      return Optional.empty();
    }
    int x = Integer.parseInt(told.group(2)) - 1;
    int y = Integer.parseInt(told.group(3)) - 1;
    return x < 0 || y < 0 ? Optional.empty() : Optional.of(new Input.Clicked(x, y));
  }

  private static Optional<Input> pressed(Key key) {
    return Optional.of(new Input.Pressed(key));
  }
}
