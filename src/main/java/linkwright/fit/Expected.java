package linkwright.fit;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a blank is expected to become in a maker's hands.
 *
 * @param lengthMm the length that is most likely
 * @param widthMm the width that is most likely
 * @param lengthSpreadMm one standard deviation of the length: what is not known of the maker, how
 *     she cuts, and how one piece differs from the next
 * @param widthSpreadMm the same of the width
 */
public record Expected(
    double lengthMm, double widthMm, double lengthSpreadMm, double widthSpreadMm) {

  /** What is out of reason in that measured length; empty if nothing is. */
  public Optional<Misfit> misfitOfLength(OptionalDouble measuredMm) {
    return Misfit.of(measuredMm, lengthMm, lengthSpreadMm);
  }

  /** What is out of reason in that measured width; empty if nothing is. */
  public Optional<Misfit> misfitOfWidth(OptionalDouble measuredMm) {
    return Misfit.of(measuredMm, widthMm, widthSpreadMm);
  }

  static Expected of(Sensitivity piece, Scatter scatter) {
    double often = scatter.share() * scatter.share();
    return new Expected(
        piece.size().lengthMm(),
        piece.size().widthMm(),
        Math.sqrt(
            Triangle.dot(piece.lengthMm(), piece.lengthMm())
                + often * piece.scatter().lengthSquare()),
        Math.sqrt(
            Triangle.dot(piece.widthMm(), piece.widthMm())
                + often * piece.scatter().widthSquare()));
  }
}
