package linkwright.link;

import java.util.List;

/**
 * How near the side of a tip's curl lies to the wire beside it: the least distance between a place
 * on the curl and one beyond it, where both ways along the wire lead away from each other.
 */
final class CurlGap {
  private static final int MOST = 2_000;

  private final CentreLine line;
  private final double wireMm;
  private final double lengthMm;
  private final boolean firstTip;

  CurlGap(CentreLine line, double wireMm, boolean firstTip) {
    this.line = line;
    this.wireMm = wireMm;
    this.lengthMm = line.lengthMm();
    this.firstTip = firstTip;
  }

  JointGap find() {
    double curlMm = curlMm();
    double stepMm = Math.max(wireMm / 8, lengthMm / MOST);
    int curl = (int) Math.ceil(curlMm / stepMm);
    int all = (int) Math.floor(lengthMm / stepMm);
    Point[] grid = new Point[all + 1];
    for (int i = 0; i <= all; i++) {
      grid[i] = at(i * stepMm);
    }
    Downhill best = new Downhill(0, lengthMm, at(0).distanceMm(at(lengthMm)));
    for (int i = 0; i < curl && i <= all; i++) {
      for (int j = i + (int) Math.ceil(Math.PI / 2 * wireMm / stepMm) + 1; j <= all; j++) {
        double distance = grid[i].distanceMm(grid[j]);
        if (distance < best.distanceMm() + stepMm && isLow(grid, i, j, distance)) {
          Downhill low =
              Downhill.from(
                  i * stepMm, j * stepMm, stepMm, 1e-9 * wireMm, this::apart, this::counts);
          best = low.distanceMm() < best.distanceMm() ? low : best;
        }
      }
    }
    double andMm = firstTip ? best.andMm() : lengthMm - best.andMm();
    return new JointGap(Joint.CURL_TO_BODY, firstTip, andMm, best.distanceMm() - wireMm);
  }

  /** How far from the tip the curl ends: where the wire first bends the other way or runs on. */
  private double curlMm() {
    List<Stretch> stretches = line.stretches();
    double hand = 0;
    double curlMm = lengthMm;
    for (int i = 0; i < stretches.size(); i++) {
      Stretch next = stretches.get(firstTip ? i : stretches.size() - 1 - i);
      if (hand != 0 && next.turn() * hand <= 0) {
        break;
      }
      hand = next.turn();
      curlMm = firstTip ? next.toMm() : lengthMm - next.fromMm();
    }
    return curlMm;
  }

  private static boolean isLow(Point[] grid, int i, int j, double distance) {
    for (int di = -1; di <= 1; di++) {
      for (int dj = -1; dj <= 1; dj++) {
        int ni = i + di;
        int nj = j + dj;
        if (ni >= 0 && nj < grid.length && grid[ni].distanceMm(grid[nj]) < distance) {
          return false;
        }
      }
    }
    return true;
  }

  private Point at(double fromTipMm) {
    return line.at(firstTip ? fromTipMm : lengthMm - fromTipMm);
  }

  private double apart(double one, double other) {
    return at(one).distanceMm(at(other));
  }

  private boolean counts(double one, double other) {
    return one >= 0 && other <= lengthMm && other - one > Math.PI / 2 * wireMm;
  }
}
