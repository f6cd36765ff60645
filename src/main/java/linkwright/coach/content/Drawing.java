package linkwright.coach.content;

import java.util.List;

/**
 * Shapes drawn to one scale.
 *
 * @param shapes the shapes, from left to right
 * @param words the same in words, a sentence each, for an output that draws nothing; empty where
 *     the captions say enough
 * @param spare whether it is left out where texts need the room: a key shows it by itself
 */
public record Drawing(List<Outline> shapes, List<String> words, boolean spare) implements Part {
  public Drawing {
    shapes = List.copyOf(shapes);
    words = List.copyOf(words);
  }

  /** A drawing that has its room. */
  public Drawing(List<Outline> shapes, List<String> words) {
    this(shapes, words, false);
  }

  /**
   * A point.
   *
   * @param xMm along the line of pull, mm
   * @param yMm across it, mm
   */
  public record At(double xMm, double yMm) {}

  /** How a stroke is drawn. */
  public enum StrokeKind {
    /** As thick as it is. */
    PLAIN,
    /** Thick enough, however small the scale, to be told from a line: what was just bent. */
    NEW,
    /** The patch inside of it is filled. */
    SOLID
  }

  /**
   * A line of a shape.
   *
   * @param line its points, in order
   * @param thickMm its thickness, mm; 0 for a thin line
   * @param kind how it is drawn
   */
  public record Stroke(List<At> line, double thickMm, StrokeKind kind) {
    public Stroke {
      line = List.copyOf(line);
    }
  }

  /**
   * One shape.
   *
   * @param caption what it is; what an output that draws nothing says of it
   * @param strokes its lines, around x = 0
   * @param lengthMm its extent along x, mm
   * @param widthMm its extent along y, mm
   * @param emphasis how much it is to be minded
   */
  public record Outline(
      String caption, List<Stroke> strokes, double lengthMm, double widthMm, Emphasis emphasis) {
    public Outline {
      strokes = List.copyOf(strokes);
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.drawing(this);
  }
}
