package linkwright.cutting;

import java.util.function.BooleanSupplier;

/**
 * Prices for the kinds of piece under which the lengths are worth as little as possible. They prove
 * that a demand dearer than all lengths together cannot be cut, and they guide the search.
 *
 * <p>Lagrangian bound: for any prices v ≥ 0, Σ over lengths of the dearest filling ≥ v · pieces
 * cut. Prices rise for what the dearest fillings make too little of and fall for what they make too
 * much of.
 */
final class Prices {
  private static final int ROUNDS = 48;
  private static final long CELLS_AT_MOST = 12_000_000;

  private final Bench bench;
  private final Fill fill;
  private final double[][] made;

  long[] price = {};
  long[] worth = {};

  /** The pieces of each kind that each length makes on average over the later rounds. */
  double[][] average() {
    return made;
  }

  Prices(Bench bench) {
    this.bench = bench;
    this.fill = new Fill(bench);
    this.made = new double[bench.size()][bench.kinds()];
  }

  /** The highest level not proved out of reach, when all lengths may be cut. */
  int highestLevel(Ladder ladder, BooleanSupplier giveUp) {
    return seek(
        ladder.at(ladder.top()),
        new Bound() {
          private int level = ladder.top();

          @Override
          public boolean tighten(long[] prices, long[] worths) {
            long all = sum(worths, 0);
            int low = 0;
            int high = level;
            while (low < high) {
              int middle = (low + high + 1) >>> 1;
              if (dot(prices, ladder.at(middle)) <= all) {
                low = middle;
              } else {
                high = middle - 1;
              }
            }
            boolean tighter = low < level;
            level = low;
            return tighter;
          }

          @Override
          public int[] demand() {
            return ladder.at(level);
          }

          @Override
          public int from() {
            return 0;
          }

          @Override
          public int answer() {
            return level;
          }
        },
        giveUp);
  }

  /** The fewest of the longest lengths not proved too few for the demand. */
  int fewestLengths(int[] demand, int atLeast, BooleanSupplier giveUp) {
    return seek(
        demand,
        new Bound() {
          private int count = atLeast;

          @Override
          public boolean tighten(long[] prices, long[] worths) {
            long needed = dot(prices, demand);
            int least = 0;
            long all = 0;
            while (all < needed && least < worths.length) {
              all += worths[worths.length - ++least];
            }
            if (all < needed) {
              least = worths.length + 1;
            }
            boolean tighter = least > count;
            count = Math.max(count, least);
            return tighter;
          }

          @Override
          public int[] demand() {
            return demand;
          }

          @Override
          public int from() {
            return Math.max(0, bench.size() - count);
          }

          @Override
          public int answer() {
            return count;
          }
        },
        giveUp);
  }

  private interface Bound {
    boolean tighten(long[] prices, long[] worths);

    int[] demand();

    int from();

    int answer();
  }

  private int seek(int[] mostWanted, Bound bound, BooleanSupplier giveUp) {
    double[] v = new double[bench.kinds()];
    for (int k = 0; k < v.length; k++) {
      double length = k == bench.ring() ? bench.turn() * 1.05 : bench.piece()[k];
      v[k] = mostWanted[k] > 0 ? length : 0;
    }
    double best = Double.POSITIVE_INFINITY;
    int rounds = (int) Math.max(4, Math.min(ROUNDS, CELLS_AT_MOST / fill.cells()));
    for (int round = 0; round < rounds; round++) {
      long[] prices = whole(v);
      long[] worths = new long[bench.size()];
      fill.at(prices);
      for (int j = 0; j < worths.length; j++) {
        worths[j] =
            j > 0 && bench.stock()[j] == bench.stock()[j - 1] ? worths[j - 1] : fill.worth(j);
      }
      boolean tighter = bound.tighten(prices, worths);
      int[] demand = bound.demand();
      double ratio = sum(worths, bound.from()) / Math.max(1.0, dot(prices, demand));
      if (tighter || ratio < best || price.length == 0) {
        best = ratio;
        price = prices;
        worth = worths;
      }
      if (giveUp.getAsBoolean()) {
        break;
      }
      step(v, demand, bound.from(), 0.15 * Math.pow(0.88, round), round * 2 >= rounds);
    }
    return bound.answer();
  }

  private void step(double[] v, int[] demand, int from, double stride, boolean keep) {
    double[] all = new double[v.length];
    double[] one = new double[v.length];
    for (int j = from; j < bench.size(); j++) {
      if (j == from || bench.stock()[j] != bench.stock()[j - 1]) {
        java.util.Arrays.fill(one, 0);
        fill.pieces(j, one);
      }
      for (int k = 0; k < v.length; k++) {
        all[k] += one[k];
        made[j][k] += keep ? one[k] : 0;
      }
    }
    for (int k = 0; k < v.length; k++) {
      if (v[k] > 0) {
        double missing = (demand[k] - all[k]) / Math.max(1.0, demand[k]);
        v[k] *= Math.exp(stride * Math.max(-1, Math.min(1, missing)));
      }
    }
  }

  private static long[] whole(double[] v) {
    double largest = 0;
    for (double price : v) {
      largest = Math.max(largest, price);
    }
    long[] prices = new long[v.length];
    for (int k = 0; k < v.length; k++) {
      prices[k] = Math.round(v[k] / Math.max(1e-300, largest) * 10_000_000);
    }
    return prices;
  }

  static long sum(long[] values, int from) {
    long all = 0;
    for (int j = from; j < values.length; j++) {
      all += values[j];
    }
    return all;
  }

  static long dot(long[] prices, int[] pieces) {
    long all = 0;
    for (int k = 0; k < prices.length; k++) {
      all += prices[k] * pieces[k];
    }
    return all;
  }
}
