package linkwright.coach.kernel;

import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.link.Formed;

/** A formed link as a shape to be drawn. */
public final class LinkShape {
  /** Points along the centre line, mm; finer than any screen shows a link. */
  private static final double STEP_MM = 0.3;

  private LinkShape() {}

  /** The link's centre line, in mm, the line of pull lying along x. */
  public static Drawing.Outline of(Formed link, String caption, Emphasis emphasis) {
    return new Drawing.Outline(
        caption,
        link.centreLine().points(STEP_MM).stream()
            .map(point -> new Drawing.At(point.xMm(), point.yMm()))
            .toList(),
        link.wireMm(),
        link.lengthMm(),
        link.widthMm(),
        emphasis);
  }
}
