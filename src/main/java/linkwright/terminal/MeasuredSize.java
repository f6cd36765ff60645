package linkwright.terminal;

import java.util.Optional;

/**
 * How much room a terminal has: as its line settings say, else as the environment says, else the 80
 * x 24 that every terminal has. A size that no screen has is not believed.
 */
final class MeasuredSize {
  private static final Display.GridSize USUAL = new Display.GridSize(80, 24);

  /** A screen of 3,840 points in letters of 4 points has 960 columns. */
  private static final int MOST = 1000;

  private final TtyMode mode;
  private final Optional<String> told;
  private Display.GridSize now;

  MeasuredSize(TtyMode mode, Environment environment) {
    this.mode = mode;
    Optional<Display.GridSize> said = mode.sizeAtStart();
    this.now = said.filter(MeasuredSize::canBe).orElseGet(() -> sizeIn(environment));
    this.told = said.filter(size -> !canBe(size)).map(size -> sentence(size, now));
  }

  private static String sentence(Display.GridSize said, Display.GridSize drawn) {
    return "The terminal says that it has "
        + said.columns()
        + " columns and "
        + said.rows()
        + " rows, which cannot be: "
        + drawn.columns()
        + " x "
        + drawn.rows()
        + " are drawn until its size changes.";
  }

  private static boolean canBe(Display.GridSize size) {
    return size.columns() <= MOST && size.rows() <= MOST;
  }

  private static Display.GridSize sizeIn(Environment environment) {
    String columns = environment.value("COLUMNS");
    String rows = environment.value("LINES");
    boolean told = columns.matches("[1-9]\\d{0,2}") && rows.matches("[1-9]\\d{0,2}");
    return told ? new Display.GridSize(Integer.parseInt(columns), Integer.parseInt(rows)) : USUAL;
  }

  /** The size when it was last looked at. */
  Display.GridSize now() {
    return now;
  }

  /** What is to be told of the size at the start, a sentence. */
  Optional<String> told() {
    return told;
  }

  /** Looks again; answers whether it is another. */
  boolean hasChanged() {
    Display.GridSize before = now;
    now = mode.size().filter(MeasuredSize::canBe).orElse(before);
    return !now.equals(before);
  }
}
