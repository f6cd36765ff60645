package linkwright.link;

/**
 * The last d of a wire at a tip, cut off square, as it lies in the plane of the link: a strip d
 * wide. How far a place is from that strip is what a joint has to close.
 */
final class TipFace {
  private static final int STEPS = 24;

  private final Point end;
  private final double outward;
  private final Point[] middle = new Point[STEPS + 1];
  private final double halfMm;

  TipFace(CentreLine line, double wireMm, boolean firstTip) {
    double lengthMm = line.lengthMm();
    end = line.at(firstTip ? 0 : lengthMm);
    outward = firstTip ? line.headingAt(0) + Math.PI : line.headingAt(lengthMm);
    halfMm = wireMm / 2;
    double reach = Math.min(wireMm, lengthMm);
    for (int i = 0; i <= STEPS; i++) {
      double back = reach * i / STEPS;
      middle[i] = line.at(firstTip ? back : lengthMm - back);
    }
  }

  /** How far a place is from the strip, in millimetres; 0 inside it. */
  double distanceMm(Point place) {
    double dx = place.xMm() - end.xMm();
    double dy = place.yMm() - end.yMm();
    double ahead = dx * Math.cos(outward) + dy * Math.sin(outward);
    double aside = Math.abs(dy * Math.cos(outward) - dx * Math.sin(outward));
    if (ahead >= 0) {
      return Math.hypot(ahead, Math.max(0, aside - halfMm));
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < STEPS; i++) {
      nearest = Math.min(nearest, toSegment(place, middle[i], middle[i + 1]));
    }
    return Math.max(0, nearest - halfMm);
  }

  private static double toSegment(Point place, Point from, Point to) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double along =
        ((place.xMm() - from.xMm()) * dx + (place.yMm() - from.yMm()) * dy) / (dx * dx + dy * dy);
    double share = Math.min(1, Math.max(0, along));
    return Math.hypot(place.xMm() - from.xMm() - share * dx, place.yMm() - from.yMm() - share * dy);
  }
}
