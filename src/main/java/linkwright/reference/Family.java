package linkwright.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** The metal that gives an alloy or a solder its name. */
public enum Family {
  GOLD,
  SILVER,
  PLATINUM,
  PALLADIUM,
  COPPER,
  OTHER;

  /** The word written in the data files: {@code silver}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Reads the word back. */
  public static Read<Family> read(String typed) {
    List<String> words = Arrays.stream(values()).map(Family::word).toList();
    for (Family family : values()) {
      if (family.word().equals(typed.strip().toLowerCase(Locale.ROOT))) {
        return Read.good(family);
      }
    }
    String hint = Nearest.of(typed, words).map(word -> " Did you mean " + word + "?").orElse("");
    return Read.bad(
        "“"
            + typed
            + "” is not a family of metals."
            + hint
            + " Known: "
            + String.join(", ", words)
            + ".");
  }
}
