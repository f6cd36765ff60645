package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** By what a wait ends. */
public enum WaitEnds {
  /** By its time. */
  TIME("time"),
  /** By a look at the pieces; the time only reminds. */
  LOOK("look"),
  /** By its time, from the last heat at the bench: the fire watch, whichever job lit the torch. */
  WATCH("watch");

  private final String word;

  WaitEnds(String word) {
    this.word = word;
  }

  /** The word that stands for it in files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<WaitEnds> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(WaitEnds::word).toList();
  }
}
