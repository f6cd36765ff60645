package linkwright.shell;

/**
 * One thing to be said aloud.
 *
 * @param kind what it is of; an earlier kind is said first
 * @param text the sentence
 */
record Utterance(Kind kind, String text) {
  /** What is said, the most urgent first. */
  enum Kind {
    CAUTION,
    WAIT,
    COUNT,
    STEP
  }
}
