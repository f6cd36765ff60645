package linkwright.fit;

import java.util.Map;
import java.util.Optional;

/**
 * A shape in closed form: a bar whose two round ends take wire. Its length falls with the ends'
 * wire and its width is that of the ends; both are straight lines in the maker's three numbers.
 */
record BarShape(int eyes) implements Shape {
  private static final double TURN_RAD = 5;

  @Override
  public Optional<FormedSize> size(double blankMm, Map<String, Double> formersMm, Maker maker) {
    double end = formersMm.get("end");
    double taken =
        end * (TURN_RAD * maker.growth() + Math.toRadians(maker.extraTurnDeg())) + maker.lostMm();
    return blankMm < taken
        ? Optional.empty()
        : Optional.of(
            new FormedSize(
                blankMm - taken + end * maker.growth(), end * maker.growth() + 0.9, taken));
  }

  @Override
  public double overlapMm(double blankMm, Map<String, Double> formersMm, Maker maker) {
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
