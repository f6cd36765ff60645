package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What becomes of a piece on which something went wrong. */
public enum AfterFault {
  /** It goes back and is redone. */
  REDO("redo"),
  /** It is lost for good. */
  SCRAP("scrap"),
  /** It is put right on the spot and stays where it is. */
  CARRY_ON("carry on");

  private final String word;

  AfterFault(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<AfterFault> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(AfterFault::word).toList();
  }
}
