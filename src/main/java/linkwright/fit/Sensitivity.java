package linkwright.fit;

import java.util.Map;
import java.util.Optional;
import linkwright.fit.PieceScatter.Change;

/**
 * A piece's size and how it changes with the maker: by differences as wide as the uncertainty,
 * since extents have kinks where another point of the wire becomes the outermost.
 */
final class Sensitivity {
  /** Half the width of a difference, in standard deviations of what is believed. */
  private static final double STEP = 0.25;

  private final Shape shape;
  private final double blankMm;
  private final Map<String, Double> formersMm;
  private final FormedSize size;
  private final double[] length = new double[Covariance.SIZE];
  private final double[] width = new double[Covariance.SIZE];
  private final PieceScatter scatter;

  private Sensitivity(
      Shape shape,
      double blankMm,
      Map<String, Double> formersMm,
      Maker maker,
      double[][] root,
      FormedSize size) {
    this.shape = shape;
    this.blankMm = blankMm;
    this.formersMm = formersMm;
    this.size = size;
    for (int i = 0; i < Covariance.SIZE; i++) {
      if (root[i][i] > 0) {
        double[] z = new double[Covariance.SIZE];
        z[i] = STEP;
        Maker more = maker.at(root, z);
        z[i] = -STEP;
        Change across = across(maker.at(root, z), more);
        length[i] = across.lengthMm() / STEP;
        width[i] = across.widthMm() / STEP;
      }
    }
    double turn = PieceScatter.meanTurnDeg(shape.eyes());
    double cut = PieceScatter.CUT_MM;
    double winding = PieceScatter.WINDING_SHARE;
    scatter =
        new PieceScatter(
            across(maker.moved(0, 0, 0, -turn), maker.moved(0, 0, 0, turn)),
            across(maker.moved(0, 0, -cut, 0), maker.moved(0, 0, cut, 0)),
            across(maker.moved(0, -winding, 0, 0), maker.moved(0, winding, 0, 0)));
  }

  /** Empty where the piece cannot be formed by this maker. */
  static Optional<Sensitivity> of(
      Shape shape, double blankMm, Map<String, Double> formersMm, Maker maker, double[][] root) {
    return shape
        .made(blankMm, formersMm, maker.bending())
        .map(size -> new Sensitivity(shape, blankMm, formersMm, maker, root, size));
  }

  /** Half the change from one maker to the other; from or to the middle if one cannot form it. */
  private Change across(Maker less, Maker more) {
    Optional<FormedSize> down = shape.made(blankMm, formersMm, less.bending());
    Optional<FormedSize> up = shape.made(blankMm, formersMm, more.bending());
    double wide = down.isPresent() && up.isPresent() ? 2 : 1;
    FormedSize from = down.orElse(size);
    FormedSize to = up.orElse(size);
    return new Change(
        (to.lengthMm() - from.lengthMm()) / wide, (to.widthMm() - from.widthMm()) / wide);
  }

  /** The size at the maker's numbers. */
  FormedSize size() {
    return size;
  }

  /** Change of the length along the columns of the root, in mm for one standard deviation. */
  double[] lengthMm() {
    return length;
  }

  /** Change of the width along the columns of the root, in mm for one standard deviation. */
  double[] widthMm() {
    return width;
  }

  /** Change with one degree more of an eye's turn. */
  Change perDegree() {
    double degrees = PieceScatter.meanTurnDeg(shape.eyes());
    Change turn = scatter.turn();
    return new Change(turn.lengthMm() / degrees, turn.widthMm() / degrees);
  }

  /** What differs from piece to piece. */
  PieceScatter scatter() {
    return scatter;
  }
}
