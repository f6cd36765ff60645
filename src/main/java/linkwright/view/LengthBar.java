package linkwright.view;

import java.util.List;
import linkwright.coach.content.Bars;
import linkwright.text.Text;

/** A length of wire as a bar to scale, cut into its pieces. */
public final class LengthBar {
  /**
   * A piece of a bar.
   *
   * @param mm its length, not negative
   * @param label written inside where there is room
   * @param kind what it is, so that it can be told without colour
   */
  public record Piece(double mm, String label, Kind kind) {
    /** Checks the length. */
    public Piece {
      if (!(mm >= 0) || Double.isInfinite(mm)) {
        throw new IllegalArgumentException("A piece can't be " + mm + " mm long");
      }
    }
  }

  /** What becomes of a piece. */
  public enum Kind {
    /** Cut for a link or ring. */
    USED("█", "#", Tone.ACCENT),
    /** Another sort of piece beside the first. */
    OTHER("▓", "=", Tone.PLAIN),
    /** Left over and good for something. */
    LEFT("░", ".", Tone.FAINT),
    /** Lost: kerf, holding tail. */
    LOST("╳", "x", Tone.FAINT);

    private final String full;
    private final String ascii;
    private final Tone tone;

    Kind(String full, String ascii, Tone tone) {
      this.full = full;
      this.ascii = ascii;
      this.tone = tone;
    }

    /** The character that this kind is drawn with, for a legend. */
    public String glyph(Glyphs glyphs) {
      return glyphs.pick(full, ascii);
    }
  }

  private LengthBar() {}

  /** How a stretch of that use is drawn. */
  static Kind kind(Bars.Use use) {
    return switch (use) {
      case CUT -> Kind.USED;
      case LOST -> Kind.LOST;
      case PLANNED -> Kind.OTHER;
      case LEFT -> Kind.LEFT;
    };
  }

  /**
   * Draws a bar, one row high, from the left edge of a row.
   *
   * @param longestMm the length that the whole width stands for, so that several bars compare
   * @return columns used
   */
  public static int draw(Canvas area, int y, double longestMm, List<Piece> pieces) {
    if (!(longestMm > 0) || Double.isInfinite(longestMm)) {
      throw new IllegalArgumentException("No scale for a longest bar of " + longestMm + " mm");
    }
    double mmSoFar = 0;
    int x = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      mmSoFar += piece.mm();
      // Ends are rounded, not lengths, so the bar as a whole is never off by more than half a
      // column.
      int end = (int) Math.round(Math.min(1, mmSoFar / longestMm) * area.width());
      if (end > x) {
        drawPiece(area, x, y, end - x, piece, i % 2 == 1);
        x = end;
      }
    }
    return x;
  }

  private static void drawPiece(Canvas area, int x, int y, int columns, Piece piece, boolean odd) {
    area.fill(x, y, columns, 1, piece.kind().glyph(area.glyphs()), piece.kind().tone);
    if (odd || columns > 2) {
      // A notch at the start keeps equal neighbours apart.
      area.text(x, y, area.glyphs().pick("▏", "|"), piece.kind().tone);
    }
    String label = " " + piece.label() + " ";
    if (!piece.label().isBlank() && Text.width(label) <= columns - 2) {
      area.text(x + (columns - Text.width(label)) / 2, y, label, Tone.PLAIN);
    }
  }
}
