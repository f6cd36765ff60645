package linkwright.fit;

import java.util.function.IntToDoubleFunction;

/**
 * What a blank is expected to become in a maker's hands.
 *
 * @param lengthMm the length that is most likely
 * @param widthMm the width that is most likely
 * @param lengthSpreadMm one standard deviation of the length: what is not known of the maker, and
 *     how one piece differs from the next
 * @param widthSpreadMm the same of the width
 */
public record Expected(
    double lengthMm, double widthMm, double lengthSpreadMm, double widthSpreadMm) {

  static Expected of(Sensitivity slope) {
    return new Expected(
        slope.size().lengthMm(),
        slope.size().widthMm(),
        spread(slope::lengthMm, slope.noise().lengthMm()),
        spread(slope::widthMm, slope.noise().widthMm()));
  }

  private static double spread(IntToDoubleFunction perColumn, double noise) {
    double sum = noise * noise;
    for (int i = 0; i < 3; i++) {
      sum += perColumn.applyAsDouble(i) * perColumn.applyAsDouble(i);
    }
    return Math.sqrt(sum);
  }
}
