package linkwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The most rings that the first n lengths yield beside at least so many blanks, for every n and
 * every number of blanks: what the first n − 1 yield, and a way to cut the nth. All ways are tried,
 * so the table is exact; and as it begins with the longest lengths, the least n that is enough is
 * the fewest lengths there are.
 */
final class CutTable {
  /** So many coils are as many as one likes. */
  static final int ANY = 0;

  private static final int NEVER = Integer.MIN_VALUE / 2;

  private final WireToCut wire;
  private final int[] most;
  private final int planes;
  private final long cells;
  private final CuttingBudget budget;
  private final List<int[]> layers = new ArrayList<>();
  private final List<List<int[]>> ways = new ArrayList<>();

  /**
   * @param most the most pieces of each kind that will be asked for
   * @param coils the most coils that will be asked for, or {@link #ANY}: then they are not counted
   */
  CutTable(WireToCut wire, int[] most, int coils, CuttingBudget budget) {
    this.wire = wire;
    this.most = most;
    this.planes = coils + 1;
    this.budget = budget;
    long all = planes;
    for (int k = 0; k < wire.ring(); k++) {
      all = Math.min(Integer.MAX_VALUE, all * (most[k] + 1L));
    }
    this.cells = all;
  }

  /** Makes the table answer for one length more; false if the budget does not allow it. */
  boolean grow() {
    int length = ways.size();
    int[] none = new int[most.length];
    List<int[]> tried = WaysToCut.of(wire, length, none, most, budget.ways(cells));
    if (!budget.spend(cells, tried.size())) {
      return false;
    }
    layers.add(length == 0 ? ofNoLength() : layer(length - 1));
    ways.add(tried);
    return true;
  }

  private int[] ofNoLength() {
    int[] layer = new int[(int) cells];
    Arrays.fill(layer, NEVER);
    for (int coils = 0; coils < planes; coils++) {
      layer[coils * (layer.length / planes)] = 0;
    }
    return layer;
  }

  private int[] layer(int length) {
    int[] layer = new int[(int) cells];
    Arrays.fill(layer, NEVER);
    for (int[] way : ways.get(length)) {
      int coil = coilOf(way);
      for (int coils = coil; coils < planes; coils++) {
        raise(layer, layers.get(length), way, 0, coils, coils - coil);
      }
    }
    return layer;
  }

  private int coilOf(int[] way) {
    return planes > 1 && way[wire.ring()] > 0 ? 1 : 0;
  }

  private void raise(int[] layer, int[] before, int[] way, int kind, int to, int from) {
    int rings = way[wire.ring()];
    if (kind == wire.ring()) {
      layer[to] = Math.max(layer[to], before[from] + rings);
      return;
    }
    int row = most[kind] + 1;
    int cut = way[kind];
    if (kind + 1 < wire.ring()) {
      for (int n = 0; n < row; n++) {
        raise(layer, before, way, kind + 1, to * row + n, from * row + Math.max(0, n - cut));
      }
      return;
    }
    // The last kind again, in two plain loops, of which the processor takes many steps at once.
    for (int n = 0; n < cut; n++) {
      layer[to * row + n] = Math.max(layer[to * row + n], before[from * row] + rings);
    }
    for (int n = cut; n < row; n++) {
      layer[to * row + n] = Math.max(layer[to * row + n], before[from * row + n - cut] + rings);
    }
  }

  /** Whether the first so many lengths yield the pieces, with at most so many coils. */
  boolean yields(int lengths, int[] pieces, int coils) {
    return way(lengths, pieces, coils).length > 0;
  }

  /**
   * A way to cut the last of the lengths, without a coil if there is one; empty if there is none.
   */
  private int[] way(int lengths, int[] pieces, int coils) {
    int[] before = layers.get(lengths - 1);
    int[] found = {};
    for (int[] way : ways.get(lengths - 1)) {
      int cell = coils - coilOf(way);
      for (int k = 0; k < wire.ring(); k++) {
        cell = cell * (most[k] + 1) + Math.max(0, pieces[k] - way[k]);
      }
      int rings = way[wire.ring()];
      boolean better = found.length == 0 || rings == 0;
      if (cell >= 0 && better && before[cell] + rings >= pieces[wire.ring()]) {
        found = way;
      }
    }
    return found;
  }

  /**
   * The pieces after which the least wire is missing, of all that the lengths yield: no fewer of
   * any kind than those. Coils are not counted.
   */
  int[] leastMissing(int[] least) {
    int[] rings = layer(ways.size() - 1);
    int[] best = least;
    long missing = wire.missing(least);
    for (int cell = 0; cell < rings.length; cell++) {
      int[] pieces = pieces(cell, rings[cell]);
      boolean enough = rings[cell] >= 0;
      for (int k = 0; enough && k < pieces.length; k++) {
        enough = pieces[k] >= least[k];
      }
      if (enough && wire.missing(pieces) < missing) {
        best = pieces;
        missing = wire.missing(pieces);
      }
    }
    return best;
  }

  private int[] pieces(int cell, int rings) {
    int[] pieces = new int[wire.kinds()];
    int left = cell;
    for (int k = wire.ring() - 1; k >= 0; k--) {
      pieces[k] = left % (most[k] + 1);
      left /= most[k] + 1;
    }
    pieces[wire.ring()] = Math.min(most[wire.ring()], rings);
    return pieces;
  }

  /** What to cut from each length so that the first so many yield the pieces, which they must. */
  CutCounts cut(int lengths, int[] pieces, int coils) {
    int[][] cut = new int[wire.lengths().length][wire.kinds()];
    int[] left = pieces.clone();
    int coilsLeft = coils;
    for (int n = lengths; n > 0; n--) {
      int[] way = way(n, left, coilsLeft);
      coilsLeft -= coilOf(way);
      for (int k = 0; k < left.length; k++) {
        cut[n - 1][k] = Math.min(left[k], way[k]);
        left[k] -= cut[n - 1][k];
      }
    }
    return new CutCounts(cut);
  }
}
