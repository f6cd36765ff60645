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
    CAUTION("cautions"),
    WAIT("waits"),
    COUNT("counts"),
    STEP("steps"),
    STILL("still-to-do");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word by which it is chosen in the settings. */
    String word() {
      return word;
    }
  }
}
