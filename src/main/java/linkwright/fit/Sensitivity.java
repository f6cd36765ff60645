package linkwright.fit;

import java.util.Map;
import java.util.Optional;

/**
 * A piece's size and how it changes with the maker: by differences as wide as the uncertainty,
 * since extents have kinks where another point of the wire becomes the outermost.
 */
final class Sensitivity {
  /** Half the width of a difference, in standard deviations of what is believed. */
  private static final double STEP = 0.25;

  private final FormedSize size;
  private final double[] length = new double[3];
  private final double[] width = new double[3];
  private final Noise noise;

  private Sensitivity(
      Shape shape,
      double blankMm,
      Map<String, Double> formersMm,
      Maker maker,
      double[][] root,
      FormedSize size) {
    this.size = size;
    for (int i = 0; i < 3; i++) {
      if (root[i][i] > 0) {
        double[] z = new double[3];
        z[i] = STEP;
        Maker more = maker.at(root, z);
        z[i] = -STEP;
        Maker less = maker.at(root, z);
        Noise across = across(shape, blankMm, formersMm, less, more);
        length[i] = across.lengthMm() / STEP;
        width[i] = across.widthMm() / STEP;
      }
    }
    double turn = Noise.meanTurnDeg(shape.eyes());
    noise = across(shape, blankMm, formersMm, maker.turned(-turn), maker.turned(turn));
  }

  /** Empty where the piece cannot be formed by this maker. */
  static Optional<Sensitivity> of(
      Shape shape, double blankMm, Map<String, Double> formersMm, Maker maker, double[][] root) {
    return shape
        .size(blankMm, formersMm, maker)
        .map(size -> new Sensitivity(shape, blankMm, formersMm, maker, root, size));
  }

  /** Half the change from one maker to the other; from or to the middle if one cannot form it. */
  private Noise across(
      Shape shape, double blankMm, Map<String, Double> formersMm, Maker less, Maker more) {
    Optional<FormedSize> down = shape.size(blankMm, formersMm, less);
    Optional<FormedSize> up = shape.size(blankMm, formersMm, more);
    double wide = down.isPresent() && up.isPresent() ? 2 : 1;
    FormedSize from = down.orElse(size);
    FormedSize to = up.orElse(size);
    return new Noise(
        (to.lengthMm() - from.lengthMm()) / wide, (to.widthMm() - from.widthMm()) / wide);
  }

  /** The size at the maker's numbers. */
  FormedSize size() {
    return size;
  }

  /** Change of the length along one column of the root, in mm for one standard deviation. */
  double lengthMm(int column) {
    return length[column];
  }

  /** Change of the width along one column of the root, in mm for one standard deviation. */
  double widthMm(int column) {
    return width[column];
  }

  /** What the eyes' turn does from piece to piece. */
  Noise noise() {
    return noise;
  }
}
