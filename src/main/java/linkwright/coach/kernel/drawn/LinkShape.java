package linkwright.coach.kernel.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.link.BendStep;
import linkwright.link.BendSteps;
import linkwright.link.Formed;
import linkwright.link.Point;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;

/** A formed link as a shape to be drawn. */
public final class LinkShape {
  /** Points along the centre line, mm; finer than any screen shows a link. */
  private static final double STEP_MM = 0.3;

  private LinkShape() {}

  /** The link's centre line, in mm, the line of pull lying along x. */
  public static Drawing.Outline of(Formed link, String caption, Emphasis emphasis) {
    return new Drawing.Outline(
        caption,
        List.of(
            new Drawing.Stroke(
                at(link.centreLine().points(STEP_MM)), link.wireMm(), Drawing.StrokeKind.PLAIN)),
        link.lengthMm(),
        link.widthMm(),
        emphasis);
  }

  /** The wire bend by bend, side by side; the last is the whole link. */
  public static Drawing of(BendSteps bends, double wireMm, UnitStyle units, TradeWords words) {
    List<Drawing.Outline> shapes = new ArrayList<>();
    for (BendStep step : bends.steps()) {
      List<Drawing.At> line = at(step.line());
      boolean last = step.number() == bends.steps().size();
      shapes.add(
          new Drawing.Outline(
              words.show(step.caption(units)),
              strokes(step, line, wireMm),
              2 * line.stream().mapToDouble(at -> Math.abs(at.xMm())).max().orElse(0) + wireMm,
              reach(line, Drawing.At::yMm) + wireMm,
              last ? Emphasis.NOW : Emphasis.PLAIN));
    }
    return new Drawing(shapes, bends.says(units).stream().map(words::show).toList(), false);
  }

  /** What was just bent is as thick as the wire, the rest a thin line. */
  private static List<Drawing.Stroke> strokes(BendStep step, List<Drawing.At> line, double wireMm) {
    List<Drawing.Stroke> strokes = new ArrayList<>();
    strokes.add(new Drawing.Stroke(line, 0, Drawing.StrokeKind.PLAIN));
    step.bent()
        .forEach(part -> strokes.add(new Drawing.Stroke(at(part), wireMm, Drawing.StrokeKind.NEW)));
    return strokes;
  }

  private static double reach(List<Drawing.At> line, ToDoubleFunction<Drawing.At> along) {
    return line.stream().mapToDouble(along).max().orElse(0)
        - line.stream().mapToDouble(along).min().orElse(0);
  }

  private static List<Drawing.At> at(List<Point> points) {
    return points.stream().map(point -> new Drawing.At(point.xMm(), point.yMm())).toList();
  }
}
