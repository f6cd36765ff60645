package linkwright.view;

import java.text.Normalizer;
import linkwright.text.Columns;
import linkwright.text.Text;

/**
 * A grid as a place without Unicode can show it: signs by their nearest ASCII look, letters without
 * their accents, a question mark for the rest. The columns stay.
 */
public final class Ascii {
  private static final String FULL =
      "…·•×÷−–—‐‑‘’‚“”„°±µ½¼¾¹²³←→↑↓↔│─━┃╌█▀▄▌▐■□▪●○◐◇◆✓✗∘Ø⌀£€§ßæÆøœŒđĐłŁþðı";
  private static final String NEAR =
      "~.*x/-----'',\"\"\"o+u///123<>^v-|-=|-#\"_[]#?.@oc<*vxoOOLESsaAooOdDlLtdi";

  private Ascii() {}

  /** The same grid in ASCII. */
  public static Grid of(Grid grid) {
    Cell[] cells = new Cell[grid.width() * grid.height()];
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        Cell cell = grid.at(x, y);
        cells[y * grid.width() + x] =
            cell.width() == 1
                ? Cell.of(nearest(cell.glyph().charAt(0)), cell.tone())
                : Cell.of('?', cell.tone());
      }
    }
    return new Grid(grid.width(), grid.height(), cells, grid.cursor(), grid.spots(), grid.inks());
  }

  /** The text in ASCII, one character a column. */
  public static String of(String text) {
    StringBuilder ascii = new StringBuilder(text.length());
    String safe = Text.safe(Glyphs.ASCII.spelt(text));
    for (int i = 0; i < safe.length(); i++) {
      char c = safe.charAt(i);
      ascii.append(Columns.of(c) == 2 ? "??" : String.valueOf(nearest(c)));
    }
    return ascii.toString();
  }

  private static char nearest(char c) {
    if (c < 0x7F) {
      return c;
    }
    int known = FULL.indexOf(c);
    if (known >= 0) {
      return NEAR.charAt(known);
    }
    char base = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD).charAt(0);
    return base < 0x7F ? base : '?';
  }
}
