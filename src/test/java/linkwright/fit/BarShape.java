package linkwright.fit;

import java.util.Map;
import java.util.Optional;
import linkwright.link.Bending;

/**
 * A shape in closed form: a bar whose two round ends take wire. Its length falls with the ends'
 * wire and its width is that of the ends; both are straight lines in the maker's four numbers.
 */
record BarShape(int eyes) implements Shape {
  private static final double TURN_RAD = 5;

  /** How many times its former an end comes out. */
  static double grown(Bending bending) {
    return 1 + bending.clearanceShare() + 10 * bending.stressShare();
  }

  @Override
  public Optional<FormedSize> size(double blankMm, Map<String, Double> formersMm, Bending bending) {
    double end = formersMm.get("end");
    double grown = grown(bending);
    double taken =
        end * (TURN_RAD * grown + Math.toRadians(bending.extraTurnDeg())) + bending.lostMm();
    return blankMm < taken
        ? Optional.empty()
        : Optional.of(new FormedSize(blankMm - taken + end * grown, end * grown + 0.9, taken));
  }

  @Override
  public double overlapMm(
      double blankMm, Map<String, Double> formersMm, Bending bending, double deeperThanMm) {
    return 0;
  }

  @Override
  public double wireMm() {
    return 0.9;
  }

  @Override
  public Map<String, Double> formersMm() {
    return Map.of("end", 3.0);
  }
}
