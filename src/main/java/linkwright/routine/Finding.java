package linkwright.routine;

/**
 * Something that does not hold together in a routine or a caution.
 *
 * @param step the id of the step it is about; empty when it is about the file as a whole
 * @param key the key of the file under which it stands, such as {@code cautions}
 * @param wrong what is wrong, a sentence that names the step
 * @param expected what would be right, a sentence; may be empty
 */
public record Finding(StepId step, String key, String wrong, String expected) {
  static Finding at(Step step, String key, String wrong, String expected) {
    return new Finding(step.id(), key, wrong, expected);
  }

  static Finding ofFile(String key, String wrong, String expected) {
    return new Finding(StepId.NONE, key, wrong, expected);
  }
}
