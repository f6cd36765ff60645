package linkwright.view;

import java.util.List;
import linkwright.link.Formed;

/** A link drawn to scale from its computed centre line, its wire as thick as it is. */
final class LinkDrawing {
  private static final double STEP_MM = 0.3;

  private LinkDrawing() {}

  /** Draws it in the middle of the area, the line of pull lying across. */
  static void draw(Canvas area, Formed link, double dotsPerMm, Tone tone) {
    if (area.width() < 1 || area.height() < 1) {
      return;
    }
    double middleY = (link.leastYMm() + link.greatestYMm()) / 2;
    Dots dots = new Dots(area.width(), area.height(), dotsPerMm, new Dots.At(0, middleY));
    List<Dots.At> line =
        link.centreLine().points(STEP_MM).stream()
            .map(point -> new Dots.At(point.xMm(), point.yMm()))
            .toList();
    dots.wire(line, link.wireMm());
    dots.draw(area, tone);
  }
}
