package linkwright.view;

import java.util.EnumMap;
import java.util.Map;
import linkwright.text.Columns;

/**
 * One place of a grid.
 *
 * @param glyph one character; empty for the right half of a character that takes two columns
 * @param width columns that the character takes: 1, 2, or 0 for such a right half
 * @param tone what it means
 */
public record Cell(String glyph, int width, Tone tone) {
  private static final int COMMON = 0x7F;
  private static final Map<Tone, Cell[]> CACHE = new EnumMap<>(Tone.class);

  static {
    for (Tone tone : Tone.values()) {
      Cell[] common = new Cell[COMMON];
      for (int c = ' '; c < COMMON; c++) {
        common[c] = new Cell(String.valueOf((char) c), 1, tone);
      }
      CACHE.put(tone, common);
    }
  }

  /** Checks that the width is one that a cell can have. */
  public Cell {
    if (width < 0 || width > 2 || (width == 0) != glyph.isEmpty()) {
      throw new IllegalArgumentException("A cell can't be \"" + glyph + "\" of width " + width);
    }
  }

  /** A cell that holds a safe character; the common ones are made once. */
  static Cell of(char character, Tone tone) {
    if (character >= ' ' && character < COMMON) {
      return CACHE.get(tone)[character];
    }
    return new Cell(String.valueOf(character), Columns.of(character), tone);
  }

  /** The right half of a character that takes two columns. */
  static Cell covered(Tone tone) {
    return new Cell("", 0, tone);
  }

  /** An empty place. */
  static Cell blank(Tone tone) {
    return CACHE.get(tone)[' '];
  }
}
