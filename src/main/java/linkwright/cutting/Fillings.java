package linkwright.cutting;

import java.util.function.Predicate;

/**
 * Every sensible way to cut one length, none of it more than is still wanted: all counts of the
 * longer blanks, and the shortest blank or the coil taking what then remains.
 */
final class Fillings {
  private final Bench bench;
  private final int[] pieces;
  private int[] wanted = {};
  private Predicate<int[]> visitor = pieces -> true;
  private long mostTurns;

  Fillings(Bench bench) {
    this.bench = bench;
    this.pieces = new int[bench.kinds()];
  }

  /**
   * Shows each filling to the visitor, in an array that is used again.
   *
   * @return false when the visitor said false and so broke off
   */
  boolean each(int length, int[] stillWanted, Predicate<int[]> shown) {
    wanted = stillWanted;
    visitor = shown;
    mostTurns = bench.mostTurns(length);
    if (!blanks(0, bench.room(length), false)) {
      return false;
    }
    return wanted[bench.ring()] == 0
        || mostTurns == 0
        || blanks(0, bench.room(length) - bench.tail() - bench.turn(), true);
  }

  private boolean blanks(int kind, long room, boolean coil) {
    if (room < 0) {
      return true;
    }
    if (kind == bench.ring()) {
      long turns = coil ? Math.min(mostTurns, 1 + room / bench.turn()) : 0;
      pieces[kind] = (int) Math.min(wanted[kind], turns);
      return visitor.test(pieces);
    }
    int most = (int) Math.min(wanted[kind], room / bench.piece()[kind]);
    int least = !coil && kind == bench.ring() - 1 ? most : 0;
    for (int n = most; n >= least; n--) {
      pieces[kind] = n;
      if (!blanks(kind + 1, room - n * bench.piece()[kind], coil)) {
        return false;
      }
    }
    return true;
  }
}
