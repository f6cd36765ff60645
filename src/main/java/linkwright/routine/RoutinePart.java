package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The part of a job that a step belongs to. */
public enum RoutinePart {
  /** Wire, tools and bench are made ready. */
  PREPARE("prepare"),
  /** Test pieces, until one is right. */
  TRIAL("trial"),
  /** The trial length: a few finished links with rings and clasp. */
  SAMPLE("sample"),
  /** The pieces of the run, in batches. */
  RUN("run"),
  /** Pieces become a chain. */
  JOIN("join"),
  /** The chain, or the part, is finished and looked over. */
  FINISH("finish");

  private final String word;

  RoutinePart(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine files. */
  public String word() {
    return word;
  }

  /** What a word of a file stands for; empty if nothing. */
  public static Optional<RoutinePart> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(RoutinePart::word).toList();
  }
}
