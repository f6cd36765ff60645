package linkwright.view;

import java.util.ArrayList;
import java.util.List;

/**
 * Figures built of blocks, as tall as the room allows, for a count or a timer to be read across a
 * workshop. Each figure is a pattern of 3 x 5 dots; a dot is {@code size} half-rows high and as
 * many columns wide, so that it looks square on a screen whose rows are twice as high as its
 * columns are wide.
 */
public final class BigFigures {
  private static final String KNOWN = "0123456789:/.,-+ ";
  private static final int DOTS_HIGH = 5;

  /** Five rows of dots for each known character, top first. */
  private static final String[] DOTS = {
    "###|#.#|#.#|#.#|###",
    ".#.|##.|.#.|.#.|###",
    "###|..#|###|#..|###",
    "###|..#|.##|..#|###",
    "#.#|#.#|###|..#|..#",
    "###|#..|###|..#|###",
    "###|#..|###|#.#|###",
    "###|..#|..#|.#.|.#.",
    "###|#.#|###|#.#|###",
    "###|#.#|###|..#|###",
    ".|#|.|#|.",
    "..#|..#|.#.|#..|#..",
    ".|.|.|.|#",
    "..|..|..|.#|#.",
    "...|...|###|...|...",
    "...|.#.|###|.#.|...",
    "..|..|..|..|..",
  };

  private BigFigures() {}

  /**
   * The largest size at which the text fits, 0 when it doesn't fit at any.
   *
   * @throws IllegalArgumentException if the text holds a character that has no big form
   */
  public static int fit(String text, int columns, int rows, Glyphs glyphs) {
    int size = 0;
    while (columnsAt(text, size + 1) <= columns && rowsAt(size + 1, glyphs) <= rows) {
      size++;
    }
    // Without half blocks only whole rows can be drawn: sizes go up in steps of two.
    return !glyphs.halfBlocks() && size > 1 ? size - size % 2 : size;
  }

  /** Columns that a text takes at a size. */
  public static int columnsAt(String text, int size) {
    int dots = 0;
    for (int i = 0; i < text.length(); i++) {
      dots += dotsOf(text.charAt(i))[0].length() + (i > 0 ? 1 : 0);
    }
    return dots * size;
  }

  /** Rows that a text takes at a size. */
  public static int rowsAt(int size, Glyphs glyphs) {
    // Without half blocks a dot of the smallest size is a whole row high.
    int halfRows = !glyphs.halfBlocks() && size == 1 ? 2 : size;
    return (DOTS_HIGH * halfRows + 1) / 2;
  }

  /** Rows that {@link #draw} needs in that room: those of the largest size that fits, or one. */
  static int high(String text, int columns, int rows, Glyphs glyphs) {
    int size = fit(text, columns, rows, glyphs);
    return size == 0 ? Math.min(1, rows) : rowsAt(size, glyphs);
  }

  /** The text at a size, row by row. */
  public static List<String> rows(String text, int size, Glyphs glyphs) {
    int rows = rowsAt(size, glyphs);
    int halfRowsPerDot = !glyphs.halfBlocks() && size == 1 ? 2 : size;
    List<String> drawn = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      String upper = dotRow(text, size, 2 * row / halfRowsPerDot);
      String lower = dotRow(text, size, (2 * row + 1) / halfRowsPerDot);
      drawn.add(glyphs == Glyphs.ASCII ? upper : halves(upper, lower));
    }
    return List.copyOf(drawn);
  }

  /**
   * Draws the text in the middle of the area, as large as fits; where no size fits it is written
   * small. Answers with the rows used.
   */
  public static int draw(Canvas area, String text, Tone tone) {
    int size = fit(text, area.width(), area.height(), area.glyphs());
    if (size == 0) {
      area.centred(area.height() / 2, text, tone);
      return Math.min(1, area.height());
    }
    List<String> rows = rows(text, size, area.glyphs());
    int top = (area.height() - rows.size()) / 2;
    int left = (area.width() - columnsAt(text, size)) / 2;
    for (int i = 0; i < rows.size(); i++) {
      area.text(left, top + i, rows.get(i), tone);
    }
    return rows.size();
  }

  private static String dotRow(String text, int size, int dotRow) {
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      if (i > 0) {
        row.append(" ".repeat(size));
      }
      String[] dots = dotsOf(text.charAt(i));
      String line = dotRow < DOTS_HIGH ? dots[dotRow] : ".".repeat(dots[0].length());
      for (int d = 0; d < line.length(); d++) {
        row.append((line.charAt(d) == '#' ? "#" : " ").repeat(size));
      }
    }
    return row.toString();
  }

  private static String halves(String upper, String lower) {
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < upper.length(); i++) {
      boolean up = upper.charAt(i) == '#';
      boolean down = lower.charAt(i) == '#';
      row.append(up ? (down ? '█' : '▀') : (down ? '▄' : ' '));
    }
    return row.toString();
  }

  private static String[] dotsOf(char c) {
    int at = KNOWN.indexOf(c);
    if (at < 0) {
      throw new IllegalArgumentException("No big figure for \"" + c + "\"");
    }
    return DOTS[at].split("\\|");
  }
}
