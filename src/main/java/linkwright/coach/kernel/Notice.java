package linkwright.coach.kernel;

/**
 * One sentence for the user; the next key takes it away.
 *
 * @param text the sentence, empty for none
 * @param trouble whether something is wrong
 */
public record Notice(String text, boolean trouble) {
  static final Notice NONE = new Notice("", false);

  /** The sentence, with a sign before it where something is wrong. */
  public String told() {
    return trouble && !text.isEmpty() ? "! " + text : text;
  }
}
