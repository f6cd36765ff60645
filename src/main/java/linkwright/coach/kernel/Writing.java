package linkwright.coach.kernel;

import java.util.ArrayList;
import java.util.List;

/**
 * What is asked to be written and not known to be on the disk. Until it is, the model stays as it
 * was: what is shown is what is kept.
 */
public sealed interface Writing {
  /** Everything is on the disk. */
  record Nothing() implements Writing {}

  /**
   * An answer is waited for.
   *
   * @param asked what is to be written
   * @param held what the place holds once it is
   * @param notice what is told once it is
   * @param waiting what was pressed meanwhile, to be read against the model after it
   */
  record Pending(Effect asked, Held held, Notice notice, List<Message> waiting) implements Writing {
    public Pending {
      waiting = List.copyOf(waiting);
    }

    /** The same, with one more press that waits. */
    public Pending and(Message pressed) {
      List<Message> more = new ArrayList<>(waiting);
      more.add(pressed);
      return new Pending(asked, held, notice, more);
    }
  }

  /**
   * It could not be written; the same is tried again or given up.
   *
   * @param asked what was to be written
   * @param held what the place holds once it is
   * @param notice what is told once it is
   * @param why what went wrong
   * @param known whether it is certain that nothing of it is in the book
   */
  record Failed(Effect asked, Held held, Notice notice, String why, boolean known)
      implements Writing {}
}
