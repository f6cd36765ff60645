package linkwright.wire;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** The shape of a wire cut across. */
public enum Section {
  ROUND,
  SQUARE,
  HALF_ROUND,
  STRIP;

  /** The word written in files and commands: {@code half-round}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Reads the word back. */
  public static Read<Section> read(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    List<String> words = Arrays.stream(values()).map(Section::word).toList();
    for (Section section : values()) {
      if (section.word().equals(wanted)) {
        return Read.good(section);
      }
    }
    String hint = Nearest.of(wanted, words).map(word -> " Did you mean " + word + "?").orElse("");
    return Read.bad(
        "“"
            + typed.strip()
            + "” is not a section."
            + hint
            + " Write round, square, half-round or strip.");
  }
}
