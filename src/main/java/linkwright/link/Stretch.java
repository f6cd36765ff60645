package linkwright.link;

/**
 * One stretch of a centre line: straight where {@code turn} is 0, else an arc whose radius changes
 * evenly with the angle.
 *
 * <p>With ψ = heading + turn·u and r = r₀ + (r₁ − r₀)u for u from 0 to 1, dp/dψ = ±r(cos ψ, sin ψ),
 * which has a closed form; so points, ends and extents are exact.
 *
 * @param fromMm how far along the wire it starts
 * @param x where it starts, in millimetres
 * @param y where it starts, in millimetres
 * @param heading which way the wire runs there, in radians
 * @param lengthMm its length along the wire
 * @param turn how far it turns, in radians, left positive
 * @param startRadiusMm the radius where it starts; 0 where straight
 * @param endRadiusMm the radius where it ends; 0 where straight
 * @param bit the place of its bit in the whole walk, from 0
 */
record Stretch(
    double fromMm,
    double x,
    double y,
    double heading,
    double lengthMm,
    double turn,
    double startRadiusMm,
    double endRadiusMm,
    int bit) {

  static Stretch straight(
      double fromMm, double x, double y, double heading, double lengthMm, int bit) {
    return new Stretch(fromMm, x, y, heading, lengthMm, 0, 0, 0, bit);
  }

  double toMm() {
    return fromMm + lengthMm;
  }

  boolean isStraight() {
    return turn == 0;
  }

  double endHeading() {
    return heading + turn;
  }

  /** How far it has turned, unsigned, after a length along it. */
  private double angleAfter(double alongMm) {
    double rate = (endRadiusMm - startRadiusMm) / Math.abs(turn);
    double root = Math.sqrt(Math.max(0, startRadiusMm * startRadiusMm + 2 * rate * alongMm));
    return 2 * alongMm / (startRadiusMm + root);
  }

  /** Where the wire is after a length along this stretch. */
  Point after(double alongMm) {
    if (isStraight()) {
      return new Point(x + alongMm * Math.cos(heading), y + alongMm * Math.sin(heading));
    }
    return turned(angleAfter(alongMm));
  }

  double headingAfter(double alongMm) {
    return isStraight() ? heading : heading + Math.signum(turn) * angleAfter(alongMm);
  }

  /** Where the wire is once it has turned by an unsigned angle of this arc. */
  Point turned(double angle) {
    double hand = Math.signum(turn);
    double rate = (endRadiusMm - startRadiusMm) / Math.abs(turn);
    double now = heading + hand * angle;
    double radius = startRadiusMm + rate * angle;
    double sin0 = Math.sin(heading);
    double cos0 = Math.cos(heading);
    double sin1 = Math.sin(now);
    double cos1 = Math.cos(now);
    return new Point(
        x + hand * (radius * sin1 - startRadiusMm * sin0) + rate * (cos1 - cos0),
        y - hand * (radius * cos1 - startRadiusMm * cos0) + rate * (sin1 - sin0));
  }

  Point start() {
    return new Point(x, y);
  }

  Point end() {
    return isStraight() ? after(lengthMm) : turned(Math.abs(turn));
  }

  /** The centre of curvature where this arc starts. */
  Point startCentre() {
    double reach = Math.signum(turn) * startRadiusMm;
    return new Point(x - reach * Math.sin(heading), y + reach * Math.cos(heading));
  }

  /** The centre of curvature where this arc ends. */
  Point endCentre() {
    Point end = end();
    double reach = Math.signum(turn) * endRadiusMm;
    double now = endHeading();
    return new Point(end.xMm() - reach * Math.sin(now), end.yMm() + reach * Math.cos(now));
  }

  /** The same stretch seen from a frame whose origin is (ox, oy) and whose x axis points along. */
  Stretch seenFrom(double ox, double oy, double along) {
    double cos = Math.cos(along);
    double sin = Math.sin(along);
    double dx = x - ox;
    double dy = y - oy;
    return new Stretch(
        fromMm,
        dx * cos + dy * sin,
        dy * cos - dx * sin,
        heading - along,
        lengthMm,
        turn,
        startRadiusMm,
        endRadiusMm,
        bit);
  }
}
