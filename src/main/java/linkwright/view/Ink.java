package linkwright.view;

import java.util.List;
import linkwright.coach.content.Drawing;

/**
 * A drawing as lines, for a display that has finer means than dots.
 *
 * @param x the column where its room begins, from 0
 * @param y the row where its room begins, from 0
 * @param wide columns of its room
 * @param high rows of its room
 * @param strokes its lines, mm; x = 0 lies in the middle of the room
 * @param middleYMm what lies half-way down the room, mm
 * @param dotsPerMm the scale: half columns a millimetre, across and down alike
 * @param tone what it means
 */
public record Ink(
    int x,
    int y,
    int wide,
    int high,
    List<Drawing.Stroke> strokes,
    double middleYMm,
    double dotsPerMm,
    Tone tone) {
  public Ink {
    strokes = List.copyOf(strokes);
  }

  Ink movedBy(int columns, int rows) {
    return new Ink(x + columns, y + rows, wide, high, strokes, middleYMm, dotsPerMm, tone);
  }
}
