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
    double x = xMm - other.xMm;
    double y = yMm - other.yMm;
    // Not Math.hypot: it guards against sizes that no link has, and takes most of a plan's time.
    return Math.sqrt(x * x + y * y);
  }
}
