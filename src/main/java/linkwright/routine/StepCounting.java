package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How a step is counted. */
public enum StepCounting {
  /** One press for each piece that comes through. */
  EACH("each"),
  /** Everything that waits goes through together. */
  BATCH("batch"),
  /** The step is done, but moves no piece. */
  NOTHING("nothing");

  private final String word;

  StepCounting(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<StepCounting> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(StepCounting::word).toList();
  }
}
