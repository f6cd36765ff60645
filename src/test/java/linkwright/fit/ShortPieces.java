package linkwright.fit;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Test pieces, said shortly. */
public final class ShortPieces {
  private ShortPieces() {}

  /** A piece that was measured both ways. */
  public static Tried measured(
      double blankMm, Map<String, Double> formersMm, double lengthMm, double widthMm) {
    return new Tried(
        blankMm, formersMm, OptionalDouble.of(lengthMm), OptionalDouble.of(widthMm), List.of());
  }

  /** A piece that was only looked at. */
  public static Tried judged(
      double blankMm, Map<String, Double> formersMm, List<Verdict> verdicts) {
    return new Tried(blankMm, formersMm, OptionalDouble.empty(), OptionalDouble.empty(), verdicts);
  }
}
