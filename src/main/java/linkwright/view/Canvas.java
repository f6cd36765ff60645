package linkwright.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.Drawing;
import linkwright.coach.kernel.Spot;
import linkwright.text.Columns;
import linkwright.text.Text;

/**
 * Builds a {@link Grid}. Text is made safe, kept inside, and marked where it had to be cut; drawing
 * outside does nothing, so a screen need not ask how small the window is before each word.
 *
 * <p>An {@link #area} is a window onto a part of its canvas with columns and rows of its own.
 */
public final class Canvas {
  private final Sheet sheet;
  private final int left;
  private final int top;
  private final int width;
  private final int height;

  /** What all areas of one canvas draw on. */
  private static final class Sheet {
    final int width;
    final Cell[] cells;
    final Glyphs glyphs;
    Optional<Grid.Cursor> cursor = Optional.empty();
    final List<Grid.Marked> spots = new ArrayList<>();
    final List<Ink> inks = new ArrayList<>();
    final OptionalDouble life;

    Sheet(int width, int height, Glyphs glyphs, OptionalDouble life) {
      this.life = life;
      this.width = width;
      this.cells = new Cell[width * height];
      this.glyphs = glyphs;
      Arrays.fill(cells, Cell.blank(Tone.PLAIN));
    }
  }

  /**
   * An empty canvas.
   *
   * @throws IllegalArgumentException if a size is negative
   */
  public Canvas(int width, int height, Glyphs glyphs) {
    this(width, height, glyphs, OptionalDouble.empty());
  }

  /**
   * The same for a display that draws lines and whose measure is known.
   *
   * @param life half columns that are a millimetre on this screen
   */
  Canvas(int width, int height, Glyphs glyphs, OptionalDouble life) {
    if (width < 0 || height < 0) {
      throw new IllegalArgumentException("A canvas can't be " + width + " x " + height);
    }
    this.sheet = new Sheet(width, height, glyphs, life);
    this.left = 0;
    this.top = 0;
    this.width = width;
    this.height = height;
  }

  private Canvas(Sheet sheet, int left, int top, int width, int height) {
    this.sheet = sheet;
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
  }

  /** Columns. */
  public int width() {
    return width;
  }

  /** Rows. */
  public int height() {
    return height;
  }

  /** Which characters may be drawn. */
  public Glyphs glyphs() {
    return sheet.glyphs;
  }

  /** Half columns that are a millimetre on this screen; empty where that is not known. */
  OptionalDouble life() {
    return sheet.life;
  }

  /** Draws lines over all of this canvas, for a display that can. */
  void ink(List<Drawing.Stroke> strokes, double middleYMm, double dotsPerMm, Tone tone) {
    sheet.inks.add(new Ink(left, top, width, height, strokes, middleYMm, dotsPerMm, tone));
  }

  /** Marks a rectangle: a click there means that; what lies outside this canvas is left off. */
  public void spot(int x, int y, int wide, int high, Spot spot) {
    Canvas inside = area(x, y, wide, high);
    if (inside.width > 0 && inside.height > 0) {
      sheet.spots.add(new Grid.Marked(inside.left, inside.top, inside.width, inside.height, spot));
    }
  }

  /** The part of this canvas that a rectangle covers; what lies outside is left off. */
  public Canvas area(int x, int y, int wide, int high) {
    int x0 = clamp(x, width);
    int y0 = clamp(y, height);
    int x1 = Math.max(x0, clamp(x + Math.max(0, wide), width));
    int y1 = Math.max(y0, clamp(y + Math.max(0, high), height));
    return new Canvas(sheet, left + x0, top + y0, x1 - x0, y1 - y0);
  }

  /** Writes up to the right edge and answers with the column after the last one written. */
  public int text(int x, int y, String text, Tone tone) {
    return text(x, y, width - x, text, tone);
  }

  /** Writes in at most these columns and answers with the column after the last one written. */
  public int text(int x, int y, int maxWidth, String text, Tone tone) {
    int room = Math.min(maxWidth, width - x);
    String cut = Text.cut(sheet.glyphs.spelt(text), room, sheet.glyphs.cutMark());
    int column = x;
    for (int i = 0; i < cut.length(); i++) {
      char c = cut.charAt(i);
      int columns = Columns.of(c);
      put(column, y, c, columns, tone);
      column += columns;
    }
    return column;
  }

  /** Writes so that the text ends at the right edge. */
  public void right(int y, String text, Tone tone) {
    right(width, y, width, text, tone);
  }

  /** Writes in at most these columns so that the text ends just before column {@code end}. */
  public void right(int end, int y, int maxWidth, String text, Tone tone) {
    String cut = Text.cut(text, Math.min(maxWidth, end), sheet.glyphs.cutMark());
    text(end - Text.widthOfSafe(cut), y, cut, tone);
  }

  /** Writes in the middle of the row. */
  public void centred(int y, String text, Tone tone) {
    String cut = Text.cut(text, width, sheet.glyphs.cutMark());
    text((width - Text.widthOfSafe(cut)) / 2, y, cut, tone);
  }

  /**
   * Writes over as many rows as the text needs, at most {@code maxRows}; if it needs more, the last
   * row ends with the mark. Answers with the rows written.
   */
  public int wrapped(int x, int y, int wide, int maxRows, String text, Tone tone) {
    int room = Math.min(wide, width - x);
    int rows = Math.min(maxRows, height - y);
    if (room < 1 || rows < 1) {
      return 0;
    }
    if (room == 1) {
      // No wide character fits; the mark at least tells that something is here.
      text(x, y, room, text, tone);
      return 1;
    }
    List<String> lines = Text.wrap(sheet.glyphs.spelt(text), room);
    int shown = Math.min(rows, lines.size());
    for (int i = 0; i < shown; i++) {
      boolean more = i == shown - 1 && lines.size() > shown;
      String line = lines.get(i);
      text(x, y + i, room, more ? marked(line, room) : line, tone);
    }
    return shown;
  }

  private String marked(String line, int room) {
    return Text.widthOfSafe(line) < room
        ? line + sheet.glyphs.cutMark()
        : Text.cut(line + " ", room, sheet.glyphs.cutMark());
  }

  /** Fills a rectangle with one character, one column wide. */
  public void fill(int x, int y, int wide, int high, String glyph, Tone tone) {
    String safe = Text.safe(glyph);
    if (safe.length() != 1 || Columns.of(safe.charAt(0)) != 1) {
      throw new IllegalArgumentException("Can't fill with \"" + safe + "\": one column is needed");
    }
    for (int row = Math.max(0, y); row < Math.min(height, y + high); row++) {
      for (int column = Math.max(0, x); column < Math.min(width, x + wide); column++) {
        put(column, row, safe.charAt(0), 1, tone);
      }
    }
  }

  /** Shows the cursor here; the last call counts. Outside of this canvas nothing happens. */
  public void cursor(int x, int y) {
    if (inside(x, y)) {
      sheet.cursor = Optional.of(new Grid.Cursor(left + x, top + y));
    }
  }

  /** Shows the cursor at a line that is chosen, unless it stands in a field already. */
  public void cursorUnlessTyped(int x, int y) {
    if (sheet.cursor.isEmpty()) {
      cursor(x, y);
    }
  }

  /** The finished picture of this canvas or area. */
  public Grid toGrid() {
    Cell[] cells = new Cell[width * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(sheet.cells, place(0, y), cells, y * width, width);
    }
    Optional<Grid.Cursor> inHere =
        sheet
            .cursor
            .map(at -> new Grid.Cursor(at.x() - left, at.y() - top))
            .filter(at -> inside(at.x(), at.y()));
    List<Grid.Marked> spots =
        sheet.spots.stream()
            .map(
                at -> new Grid.Marked(at.x() - left, at.y() - top, at.wide(), at.high(), at.spot()))
            .toList();
    List<Ink> inks = sheet.inks.stream().map(ink -> ink.movedBy(-left, -top)).toList();
    return new Grid(width, height, cells, inHere, spots, inks);
  }

  private void put(int x, int y, char c, int columns, Tone tone) {
    if (!inside(x, y)) {
      return;
    }
    if (columns == 2 && !inside(x + 1, y)) {
      put(x, y, sheet.glyphs.cutMark().charAt(0), 1, tone);
      return;
    }
    int place = place(x, y);
    breakWide(place, left + x);
    sheet.cells[place] = Cell.of(c, tone);
    if (columns == 2) {
      breakWide(place + 1, left + x + 1);
      sheet.cells[place + 1] = Cell.covered(tone);
    }
  }

  /** Half of a wide character can't stay: what is left of it becomes a space. */
  private void breakWide(int place, int column) {
    Cell old = sheet.cells[place];
    if (old.width() == 0 && column > 0) {
      sheet.cells[place - 1] = Cell.blank(old.tone());
    } else if (old.width() == 2 && column + 1 < sheet.width) {
      sheet.cells[place + 1] = Cell.blank(old.tone());
    }
  }

  private boolean inside(int x, int y) {
    return x >= 0 && x < width && y >= 0 && y < height;
  }

  private int place(int x, int y) {
    return (top + y) * sheet.width + left + x;
  }

  private static int clamp(int value, int most) {
    return Math.max(0, Math.min(most, value));
  }
}
