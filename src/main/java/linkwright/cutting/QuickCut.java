package linkwright.cutting;

/**
 * A good way to cut, found without going back: the longest length first, and of the ways to cut it
 * the one that loses little wire and keeps the kinds of piece in step. It is what there is when
 * everything cannot be tried.
 */
final class QuickCut {
  /** What being 1 m out of step, squared, counts beside 1 mm lost; by trial on many orders. */
  private static final double[] STRICT = {10, 100, 1};

  private static final int ROUNDS = 4;
  private static final int WAYS_OF_ONE = 200;
  private static final int WAYS_OF_ALL = 200_000;

  private final WireToCut wire;
  private final int[] goal;
  private final double goalWire;

  private QuickCut(WireToCut wire, int[] goal) {
    this.wire = wire;
    this.goal = goal;
    double all = 0;
    for (int k = 0; k < goal.length; k++) {
      all += (double) wire.each(k) * goal[k];
    }
    this.goalWire = all;
  }

  /** Lets few repeats go; fewer than {@code fewest} is not tried for. */
  static CutCounts of(WireToCut wire, int fewest) {
    CutCounts best = new CutCounts(new int[wire.lengths().length][wire.kinds()]);
    int lacking = wire.lacking(best);
    int low = fewest;
    for (int round = 0; low < lacking && round < ROUNDS; round++) {
      int aim = round == 0 ? fewest : (low + lacking) / 2;
      QuickCut quick = new QuickCut(wire, wire.without(aim));
      for (double strict : STRICT) {
        CutCounts cut = quick.cut(strict);
        int lacks = wire.lacking(cut);
        if (lacks < lacking || (lacks == lacking && cut.opened() < best.opened())) {
          best = cut;
          lacking = lacks;
        }
      }
      low = aim + 1;
    }
    return best;
  }

  private CutCounts cut(double strict) {
    int[][] cut = new int[wire.lengths().length][wire.kinds()];
    int[] left = goal.clone();
    double done = 0;
    for (int j = 0; j < cut.length && !CutCounts.none(left); j++) {
      done = Math.min(goalWire, done + wire.room(j));
      double least = Double.POSITIVE_INFINITY;
      for (int[] way : WaysToCut.of(wire, j, share(j, left), left, Integer.MAX_VALUE)) {
        double score = score(way, j, left, 1 - done / goalWire, strict);
        if (score < least) {
          least = score;
          cut[j] = way;
        }
      }
      for (int k = 0; k < left.length; k++) {
        left[k] -= cut[j][k];
      }
    }
    return new CutCounts(cut);
  }

  /** The blanks of a long length but the last few: all ways to cut it would be too many. */
  private int[] share(int length, int[] left) {
    double needed = 0;
    for (int k = 0; k < left.length; k++) {
      needed += fits(k, length) ? (double) wire.each(k) * left[k] : 0;
    }
    double ways = Math.min(WAYS_OF_ONE, (double) WAYS_OF_ALL / wire.lengths().length);
    for (int k = 2; k <= wire.ring(); k++) {
      ways *= k;
    }
    int sizes = Math.max(1, wire.ring());
    double free = Math.pow(ways, 1.0 / sizes) / sizes;
    int[] least = new int[left.length];
    for (int k = 0; k < wire.ring(); k++) {
      double share = left[k] * Math.min(1, wire.room(length) / needed);
      least[k] = fits(k, length) ? (int) Math.max(0, share - free) : 0;
    }
    return least;
  }

  private boolean fits(int kind, int length) {
    return kind == wire.ring() || wire.each(kind) <= wire.room(length);
  }

  private double score(int[] way, int length, int[] left, double later, double strict) {
    double lost = wire.room(length);
    double outOfStep = 0;
    for (int k = 0; k < way.length; k++) {
      lost -= (double) wire.each(k) * way[k];
      double off = (left[k] - way[k] - later * goal[k]) * wire.each(k);
      outOfStep += off * off;
    }
    return lost + strict * 1e-9 * outOfStep;
  }
}
