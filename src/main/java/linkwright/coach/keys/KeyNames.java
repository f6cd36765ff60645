package linkwright.coach.keys;

import java.util.Locale;
import java.util.Optional;

/**
 * Keys as they are written in the keys file and shown: {@code space}, {@code ctrl-z}, {@code u}.
 */
public final class KeyNames {
  private KeyNames() {}

  /** The name of a key. */
  public static String of(Key key) {
    if (key.kind() != Key.Kind.CHARACTER) {
      return switch (key.kind()) {
        case ESCAPE -> "esc";
        case BACK_TAB -> "shift-tab";
        default -> key.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
      };
    }
    if (key.ctrl()) {
      return "ctrl-" + key.text();
    }
    return key.text().equals(" ") ? "space" : key.text();
  }

  /** The key of that name; empty if there is none. */
  public static Optional<Key> read(String name) {
    if (name.equals("space")) {
      return Optional.of(Key.of(" "));
    }
    if (name.startsWith("ctrl-") && name.length() == 6) {
      return Optional.of(Key.ctrl(name.substring(5)));
    }
    for (Key.Kind kind : Key.Kind.values()) {
      if (kind != Key.Kind.CHARACTER && of(Key.of(kind)).equals(name)) {
        return Optional.of(Key.of(kind));
      }
    }
    return name.codePointCount(0, name.length()) == 1
        ? Optional.of(Key.of(name))
        : Optional.empty();
  }
}
