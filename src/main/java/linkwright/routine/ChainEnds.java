package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the chain is counted. */
public enum ChainEnds {
  /** Links with a ring at each end: n links take n + 1 rings. */
  RINGS("rings"),
  /** Links join each other; no rings. */
  LINKS("links"),
  /** Not a chain; pieces are simply counted. */
  NONE("none");

  private final String word;

  ChainEnds(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<ChainEnds> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(ChainEnds::word).toList();
  }
}
