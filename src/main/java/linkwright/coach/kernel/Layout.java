package linkwright.coach.kernel;

/**
 * The room of a screen inside its frame. Drawing and behaviour share it, since what has no room on
 * one page is turned over by a key.
 */
public final class Layout {
  /** Rows at the foot: what is told, and the keys. */
  public static final int FOOT = 2;

  private static final int HEAD_OF_JOB = 3;
  private static final int HEAD = 2;

  private Layout() {}

  /** Rows at the head: title and, with a job open, its chain. */
  public static int head(Model model) {
    return model.job().isPresent() ? HEAD_OF_JOB : HEAD;
  }

  /** Columns of the body; one is kept free on either side. */
  public static int width(Model model) {
    return Math.max(2, model.width() - 2);
  }

  /** Rows of the body. */
  public static int height(Model model) {
    return Math.max(1, model.height() - head(model) - FOOT);
  }
}
