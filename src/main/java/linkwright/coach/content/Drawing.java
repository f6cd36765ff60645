package linkwright.coach.content;

import java.util.List;
import linkwright.quantity.UnitStyle;

/**
 * Shapes drawn to one scale.
 *
 * @param shapes the shapes, from left to right
 * @param barMm a length that is drawn beside them for scale, mm
 * @param bar that length in the user's units
 */
public record Drawing(List<Outline> shapes, double barMm, String bar) implements Part {
  public Drawing {
    shapes = List.copyOf(shapes);
  }

  /** Shapes with a bar for scale in the user's units. */
  public static Drawing of(List<Outline> shapes, UnitStyle units) {
    double barMm = units == UnitStyle.INCH ? 25.4 / 4 : 5;
    return new Drawing(shapes, barMm, units.length(barMm));
  }

  /**
   * A point.
   *
   * @param xMm along the line of pull, mm
   * @param yMm across it, mm
   */
  public record At(double xMm, double yMm) {}

  /**
   * A wire's centre line.
   *
   * @param caption what it is; what an output that draws nothing says of it
   * @param line its points, in order
   * @param wireMm the wire's thickness, mm
   * @param lengthMm its extent along x, mm
   * @param widthMm its extent along y, mm
   * @param emphasis how much it is to be minded
   */
  public record Outline(
      String caption,
      List<At> line,
      double wireMm,
      double lengthMm,
      double widthMm,
      Emphasis emphasis) {
    public Outline {
      line = List.copyOf(line);
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.drawing(this);
  }
}
