package linkwright.view;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Spot;

/**
 * A finished picture: what stands in each cell, and where the cursor is, if anywhere. Immutable;
 * two grids are equal when they look the same.
 */
public final class Grid {
  /** Where the cursor stands, so that a terminal shows it in the field typed into. */
  public record Cursor(int x, int y) {}

  private final int width;
  private final int height;
  private final Cell[] cells;
  private final Optional<Cursor> cursor;
  private final List<Marked> spots;
  private final List<Ink> inks;

  /** A rectangle that means something when it is clicked. */
  record Marked(int x, int y, int wide, int high, Spot spot) {
    boolean holds(int atX, int atY) {
      return atX >= x && atX < x + wide && atY >= y && atY < y + high;
    }
  }

  Grid(
      int width,
      int height,
      Cell[] cells,
      Optional<Cursor> cursor,
      List<Marked> spots,
      List<Ink> inks) {
    this.spots = List.copyOf(spots);
    this.inks = List.copyOf(inks);
    this.width = width;
    this.height = height;
    this.cells = cells;
    this.cursor = cursor;
  }

  /** Columns. */
  public int width() {
    return width;
  }

  /** Rows. */
  public int height() {
    return height;
  }

  /**
   * The cell in a column and row, both from 0.
   *
   * @throws IllegalArgumentException if there is no such place
   */
  public Cell at(int x, int y) {
    if (x < 0 || x >= width || y < 0 || y >= height) {
      throw new IllegalArgumentException(
          "No cell at " + x + ", " + y + " in a grid of " + width + " x " + height);
    }
    return cells[y * width + x];
  }

  /** Where the cursor is to stand; empty to hide it. */
  public Optional<Cursor> cursor() {
    return cursor;
  }

  List<Marked> spots() {
    return spots;
  }

  /** What is drawn, for a display that draws lines; the cells show the same in dots. */
  public List<Ink> inks() {
    return inks;
  }

  /** The same picture for a display that draws the lines itself: no dots stand under them. */
  public Grid withoutDots() {
    Cell[] free = cells.clone();
    for (Ink ink : inks) {
      for (int y = ink.y(); y < Math.min(height, ink.y() + ink.high()); y++) {
        int from = y * width + ink.x();
        int to = y * width + Math.min(width, ink.x() + ink.wide());
        Arrays.fill(free, from, to, Cell.blank(Tone.PLAIN));
      }
    }
    return new Grid(width, height, free, cursor, spots, inks);
  }

  /** What a click there means; empty if nothing. */
  public Optional<Spot> spotAt(int x, int y) {
    return spots.stream().filter(marked -> marked.holds(x, y)).map(Marked::spot).findFirst();
  }

  /** A row as text; a wide character stands once and takes two columns. */
  public String row(int y) {
    StringBuilder text = new StringBuilder(width);
    for (int x = 0; x < width; x++) {
      text.append(at(x, y).glyph());
    }
    return text.toString();
  }

  /**
   * The tones of a row, one letter a column: the tone's first letter, small for {@link Tone#FAINT},
   * {@link Tone#FIELD} and {@link Tone#ALARM} in their own letters; a space for plain. For tests
   * that show styles apart from the text.
   */
  public String rowTones(int y) {
    StringBuilder tones = new StringBuilder(width);
    for (int x = 0; x < width; x++) {
      tones.append(
          switch (at(x, y).tone()) {
            case PLAIN -> ' ';
            case ACCENT -> 'A';
            case STRONG -> 'S';
            case FAINT -> 'f';
            case WARNING -> 'W';
            case REVERSED -> 'R';
            case FIELD -> 'e';
            case ALARM -> '!';
          });
    }
    return tones.toString();
  }

  /** All rows as text, spaces at their ends left off, each closed by a line feed. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (int y = 0; y < height; y++) {
      text.append(row(y).stripTrailing()).append('\n');
    }
    return text.toString();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Grid that
        && width == that.width
        && height == that.height
        && cursor.equals(that.cursor)
        && inks.equals(that.inks)
        && Arrays.equals(cells, that.cells);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * width + height) + Arrays.hashCode(cells);
  }

  @Override
  public String toString() {
    return text();
  }
}
