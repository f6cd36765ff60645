package linkwright.link;

import java.util.function.DoubleBinaryOperator;

/**
 * The nearest low place of a distance between two places on a wire, by strides that halve. Only
 * differences of values steer it, so it needs no slope and rests on an edge of what is allowed.
 *
 * @param atMm the first place along the wire
 * @param andMm the second
 * @param distanceMm the distance there
 */
record Downhill(double atMm, double andMm, double distanceMm) {
  /** A long, slanted valley is walked no further than this; its floor is level enough by then. */
  private static final int MOST_TRIES = 400;

  /** Which pairs of places count. */
  interface Allowed {
    boolean test(double atMm, double andMm);
  }

  static Downhill from(
      double atMm,
      double andMm,
      double strideMm,
      double leastStrideMm,
      DoubleBinaryOperator distance,
      Allowed allowed) {
    Downhill best = new Downhill(atMm, andMm, distance.applyAsDouble(atMm, andMm));
    double stride = strideMm;
    for (int tries = 0; stride > leastStrideMm && tries < MOST_TRIES; tries++) {
      Downhill next = best;
      for (int di = -1; di <= 1; di++) {
        for (int dj = -1; dj <= 1; dj++) {
          double at = best.atMm + di * stride;
          double and = best.andMm + dj * stride;
          if (allowed.test(at, and)) {
            double found = distance.applyAsDouble(at, and);
            next = found < next.distanceMm ? new Downhill(at, and, found) : next;
          }
        }
      }
      stride = next.distanceMm >= best.distanceMm ? stride / 2 : Math.min(strideMm, stride * 1.5);
      best = next;
    }
    return best;
  }
}
