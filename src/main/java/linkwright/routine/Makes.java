package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What comes out of a routine. */
public enum Makes {
  /** Links and what joins them. */
  CHAIN("chain"),
  /** A clasp, a set of rings, a mended link. */
  PART("part"),
  /** Wire for another routine. */
  STOCK("stock");

  private final String word;

  Makes(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<Makes> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Makes::word).toList();
  }
}
