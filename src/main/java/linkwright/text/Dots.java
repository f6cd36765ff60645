package linkwright.text;

import java.util.List;

/**
 * A drawing to scale in Braille dots: each column is two dots wide, each row four high, so the dots
 * stand square on a screen whose rows are twice as high as its columns are wide. Where Braille
 * can't be drawn, each cell with a dot in it shows as an ASCII sign for where in the cell the dots
 * are.
 *
 * <p>Millimetres count to the right and upwards, as in a drawing on paper; the point given to the
 * constructor lands in the middle.
 */
public final class Dots {
  /** Dots in the width of a cell. */
  public static final int ACROSS = 2;

  /** Dots in the height of a cell. */
  public static final int DOWN = 4;

  /** Bits of the Braille pattern by column and row of the dot (Unicode, block U+2800). */
  private static final int[][] BITS = {{0x01, 0x02, 0x04, 0x40}, {0x08, 0x10, 0x20, 0x80}};

  /** A point of a drawing, in millimetres. */
  public record At(double xMm, double yMm) {}

  private final int columns;
  private final int rows;
  private final double dotsPerMm;
  private final double middleXMm;
  private final double middleYMm;
  private final boolean[] set;

  /**
   * An empty drawing.
   *
   * @param columns cells across
   * @param rows cells down
   * @param dotsPerMm the scale, greater than 0; {@link #scale} finds the one that fills the room
   * @param middle what lands in the middle
   */
  public Dots(int columns, int rows, double dotsPerMm, At middle) {
    if (columns < 0 || rows < 0 || !(dotsPerMm > 0) || Double.isInfinite(dotsPerMm)) {
      throw new IllegalArgumentException(
          "Can't draw in " + columns + " x " + rows + " cells at " + dotsPerMm + " dots a mm");
    }
    this.columns = columns;
    this.rows = rows;
    this.dotsPerMm = dotsPerMm;
    this.middleXMm = middle.xMm();
    this.middleYMm = middle.yMm();
    this.set = new boolean[columns * ACROSS * rows * DOWN];
  }

  /** Dots a millimetre at which a thing of this size just fits; drawings at one scale compare. */
  public static double scale(double widthMm, double heightMm, int columns, int rows) {
    if (!(widthMm > 0) || !(heightMm > 0)) {
      throw new IllegalArgumentException("No scale for " + widthMm + " x " + heightMm + " mm");
    }
    int least = 1;
    return Math.min(
        Math.max(least, columns * ACROSS - 1) / widthMm,
        Math.max(least, rows * DOWN - 1) / heightMm);
  }

  /**
   * Draws wire along a line: every dot nearer to it than half the thickness, and the line itself
   * however thin.
   */
  public void wire(List<At> line, double thicknessMm) {
    double radius = Math.max(0.5, thicknessMm * dotsPerMm / 2);
    for (int i = 0; i + 1 < line.size(); i++) {
      stroke(line.get(i), line.get(i + 1), radius);
    }
    if (line.size() == 1) {
      stroke(line.get(0), line.get(0), radius);
    }
  }

  /** Draws a thin line. */
  public void line(List<At> line) {
    wire(line, 0);
  }

  /** Draws the patch inside a line that is closed from its last point to its first. */
  public void patch(List<At> edge) {
    for (int y = 0; y < rows * DOWN; y++) {
      for (int x = 0; x < columns * ACROSS; x++) {
        if (inside(edge, x, y)) {
          set[y * columns * ACROSS + x] = true;
        }
      }
    }
    line(edge);
  }

  /** Whether a ray from there to the right crosses the edge an odd number of times. */
  private boolean inside(List<At> edge, int x, int y) {
    boolean odd = false;
    for (int i = 0; i < edge.size(); i++) {
      At from = edge.get(i);
      At to = edge.get((i + 1) % edge.size());
      boolean crosses = (dotY(from) > y) != (dotY(to) > y);
      odd ^=
          crosses
              && x
                  < dotX(from)
                      + (y - dotY(from)) * (dotX(to) - dotX(from)) / (dotY(to) - dotY(from));
    }
    return odd;
  }

  private void stroke(At from, At to, double radius) {
    double x0 = dotX(from);
    double y0 = dotY(from);
    double x1 = dotX(to);
    double y1 = dotY(to);
    int firstX = (int) Math.floor(Math.max(0, Math.min(x0, x1) - radius));
    int lastX = (int) Math.ceil(Math.min(columns * ACROSS - 1, Math.max(x0, x1) + radius));
    int firstY = (int) Math.floor(Math.max(0, Math.min(y0, y1) - radius));
    int lastY = (int) Math.ceil(Math.min(rows * DOWN - 1, Math.max(y0, y1) + radius));
    for (int y = firstY; y <= lastY; y++) {
      for (int x = firstX; x <= lastX; x++) {
        if (distance(x, y, x0, y0, x1, y1) <= radius) {
          set[y * columns * ACROSS + x] = true;
        }
      }
    }
  }

  private double dotX(At at) {
    return (at.xMm() - middleXMm) * dotsPerMm + (columns * ACROSS - 1) / 2.0;
  }

  private double dotY(At at) {
    return (middleYMm - at.yMm()) * dotsPerMm + (rows * DOWN - 1) / 2.0;
  }

  /** From a point to the nearest point of a stretch of line. */
  private static double distance(double x, double y, double x0, double y0, double x1, double y1) {
    double dx = x1 - x0;
    double dy = y1 - y0;
    double square = dx * dx + dy * dy;
    double along =
        square == 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * dx + (y - y0) * dy) / square));
    return Math.hypot(x - x0 - along * dx, y - y0 - along * dy);
  }

  /**
   * A row of cells as text; spaces where nothing is drawn.
   *
   * @param ascii whether Braille can't be drawn
   */
  public String row(int row, boolean ascii) {
    StringBuilder text = new StringBuilder(columns);
    for (int column = 0; column < columns; column++) {
      int bits = bits(column, row);
      if (bits == 0) {
        text.append(' ');
      } else {
        text.append(ascii ? ascii(bits) : (char) (0x2800 + bits));
      }
    }
    return text.toString();
  }

  private int bits(int column, int row) {
    int bits = 0;
    for (int x = 0; x < ACROSS; x++) {
      for (int y = 0; y < DOWN; y++) {
        if (set[(row * DOWN + y) * columns * ACROSS + column * ACROSS + x]) {
          bits |= BITS[x][y];
        }
      }
    }
    return bits;
  }

  private static char ascii(int bits) {
    boolean upper = (bits & 0x1B) != 0;
    boolean lower = (bits & 0xE4) != 0;
    int many = Integer.bitCount(bits);
    if (many >= 5) {
      return '#';
    }
    if (upper && lower) {
      return many > 2 ? '+' : ':';
    }
    return upper ? '\'' : '.';
  }
}
