package linkwright.routine;

import java.util.List;

/**
 * By what a routine and its books know a step.
 *
 * @param word the word for it there; none for no step
 */
public record StepId(String word) {
  public static final StepId NONE = new StepId("");

  /** The words for some steps, in their order. */
  public static List<String> words(List<StepId> steps) {
    return steps.stream().map(StepId::word).toList();
  }

  /** Whether it names no step. */
  public boolean isEmpty() {
    return word.isEmpty();
  }

  // A record's own are slow in Java's quick compiler, and each entry of a book asks them often.
  @Override
  public boolean equals(Object other) {
    return other instanceof StepId same && word.equals(same.word);
  }

  @Override
  public int hashCode() {
    return word.hashCode();
  }

  /** The word for it, as it is shown. */
  @Override
  public String toString() {
    return word;
  }
}
