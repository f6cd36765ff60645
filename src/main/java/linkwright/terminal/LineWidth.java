package linkwright.terminal;

import linkwright.quantity.Count;

/** At how many columns plain lines are broken between words. */
public final class LineWidth {
  /** No line that is read is longer; where one ends sooner, the terminal would part words. */
  private static final int MOST = 80;

  private static final int LEAST = 20;

  private LineWidth() {}

  /**
   * What {@code COLUMNS} asks for, else what the terminal has now, 80 at most; a pipe takes a
   * sentence as one line.
   */
  public static int of(Environment environment) {
    if (!environment.terminal()) {
      return Integer.MAX_VALUE;
    }
    return Count.inDigits(environment.value("COLUMNS"), 4)
        .filter(columns -> columns >= LEAST)
        .or(() -> TtyMode.sizeNow().map(size -> Math.max(LEAST, Math.min(MOST, size.columns()))))
        .orElse(MOST);
  }
}
