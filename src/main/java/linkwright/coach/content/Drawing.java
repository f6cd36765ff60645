package linkwright.coach.content;

import java.util.List;

/**
 * Shapes drawn to one scale.
 *
 * @param shapes the shapes, from left to right
 * @param words the same in words, a sentence each, for an output that draws nothing; empty where
 *     the captions say enough
 */
public record Drawing(List<Outline> shapes, List<String> words) implements Part {
  public Drawing {
    shapes = List.copyOf(shapes);
    words = List.copyOf(words);
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
   * @param bent the parts of it that were just bent, drawn thick where the rest is a thin line;
   *     empty where it is drawn alike all along
   * @param emphasis how much it is to be minded
   */
  public record Outline(
      String caption,
      List<At> line,
      double wireMm,
      double lengthMm,
      double widthMm,
      List<List<At>> bent,
      Emphasis emphasis) {
    public Outline {
      line = List.copyOf(line);
      bent = bent.stream().map(List::copyOf).toList();
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.drawing(this);
  }
}
