package linkwright.link;

/**
 * A place in the plane of a link.
 *
 * @param xMm along the line of pull, in millimetres
 * @param yMm across it, to the left of someone looking along the pull, in millimetres
 */
public record Point(double xMm, double yMm) {
  /** How far apart two places are, in millimetres. */
  public double distanceMm(Point other) {
    return Math.hypot(xMm - other.xMm, yMm - other.yMm);
  }
}
