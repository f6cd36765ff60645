package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How much a routine asks of whoever makes it. */
public enum Level {
  /** A first chain. */
  BEGINNER("beginner"),
  /** Joints come good without thinking. */
  PRACTISED("practised"),
  /** Long practice. */
  SKILLED("skilled");

  private final String word;

  Level(String word) {
    this.word = word;
  }

  /** The word that stands for it in files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<Level> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Level::word).toList();
  }
}
