package linkwright.coach.content;

import java.util.List;
import linkwright.quantity.UnitStyle;

/**
 * Shapes drawn to one scale.
 *
 * @param shapes the shapes, from left to right
 * @param words the same in words, a sentence each, for an output that draws nothing; empty where
 *     the captions say enough
 * @param spare whether it is left out where texts need the room: a key shows it by itself
 * @param bars lengths of which one that has room is drawn beside, so that sizes can be read off;
 *     empty for a drawing that is no measure of anything
 */
public record Drawing(List<Outline> shapes, List<String> words, boolean spare, List<ScaleBar> bars)
    implements Part {
  public Drawing {
    shapes = List.copyOf(shapes);
    words = List.copyOf(words);
    bars = List.copyOf(bars);
  }

  /** A drawing that measures nothing. */
  public Drawing(List<Outline> shapes, List<String> words, boolean spare) {
    this(shapes, words, spare, List.of());
  }

  /** A drawing that has its room, of something that has a size. */
  public Drawing(List<Outline> shapes, List<String> words, UnitStyle units) {
    this(shapes, words, false, ScaleBar.in(units));
  }

  /** The same, left out where texts need the room. */
  public Drawing whereThereIsRoom() {
    return new Drawing(shapes, words, true, bars);
  }

  /**
   * A length to read sizes off by.
   *
   * @param mm how long it is
   * @param says the same in the user's units
   */
  public record ScaleBar(double mm, String says) {
    private static final double INCH = 25.4;

    /** Round lengths, the longest first. */
    static List<ScaleBar> in(UnitStyle units) {
      return units == UnitStyle.INCH
          ? List.of(
              new ScaleBar(INCH, "1 in"),
              new ScaleBar(INCH / 2, "1/2 in"),
              new ScaleBar(INCH / 4, "1/4 in"),
              new ScaleBar(INCH / 8, "1/8 in"),
              new ScaleBar(INCH / 16, "1/16 in"))
          : List.of(
              new ScaleBar(20, "20 mm"),
              new ScaleBar(10, "10 mm"),
              new ScaleBar(5, "5 mm"),
              new ScaleBar(2, "2 mm"),
              new ScaleBar(1, "1 mm"));
    }
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
