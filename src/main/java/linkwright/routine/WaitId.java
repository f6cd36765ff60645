package linkwright.routine;

/**
 * By what a routine and its books know a wait, whatever it is called.
 *
 * @param word the word for it there; none for no wait of a routine
 */
public record WaitId(String word) {
  public static final WaitId NONE = new WaitId("");

  /** The word for it, as it is shown. */
  @Override
  public String toString() {
    return word;
  }
}
