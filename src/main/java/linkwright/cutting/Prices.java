package linkwright.cutting;

import java.util.Arrays;
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
  private static final int ROUNDS = 150;
  private static final long CELLS_AT_MOST = 12_000_000;

  private final Bench bench;
  private final Fill fill;
  private final double[][] made;

  long[] price = {};
  long[] worth = {};
  boolean[] mayCoil = {};

  Prices(Bench bench) {
    this(bench, new Fill(bench), new double[bench.size()][bench.kinds()]);
  }

  private Prices(Bench bench, Fill fill, double[][] made) {
    this.bench = bench;
    this.fill = fill;
    this.made = made;
  }

  /** The same prices for the longest lengths alone. */
  Prices forLongest(Bench longest) {
    int from = bench.size() - longest.size();
    Prices some = new Prices(longest, fill, Arrays.copyOfRange(made, from, bench.size()));
    some.price = price;
    some.worth = Arrays.copyOfRange(worth, from, bench.size());
    some.mayCoil = Arrays.copyOfRange(mayCoil, from, bench.size());
    return some;
  }

  /** The table at the best prices. */
  Fill fill() {
    return fill;
  }

  /** The pieces of each kind that each length makes on average over the later rounds. */
  double[][] average() {
    return made;
  }

  /** The highest level not proved out of reach, when all lengths may be cut. */
  int highestLevel(Ladder ladder, BooleanSupplier giveUp) {
    return seek(new Bounds.HighestLevel(ladder), giveUp);
  }

  /** The fewest coils, and no fewer than {@code atLeast}, not proved too few for the demand. */
  int fewestCoils(int[] demand, int atLeast, BooleanSupplier giveUp) {
    return seek(new Bounds.FewestCoils(demand, atLeast), giveUp);
  }

  /** The fewest of the longest lengths not proved too few when so many may carry a coil. */
  int fewestLengths(int[] demand, int coils, BooleanSupplier giveUp) {
    return seek(new Bounds.FewestLengths(demand, coils), giveUp);
  }

  /** The fewest of the longest lengths that the best prices leave possible for the demand. */
  int lengthsNeeded(int[] demand) {
    Bounds bound = new Bounds.FewestLengths(demand, bench.size());
    bound.tighten(price, worth, worth);
    return bound.answer();
  }

  private int seek(Bounds bound, BooleanSupplier giveUp) {
    double[] v = start(bound.demand());
    double best = Double.POSITIVE_INFINITY;
    int rounds = (int) Math.max(4, Math.min(ROUNDS, CELLS_AT_MOST / fill.cells()));
    for (int round = 0; round < rounds; round++) {
      long[] prices = whole(v);
      long[] plain = new long[bench.size()];
      long[] worths = new long[bench.size()];
      fill.at(prices);
      for (int j = 0; j < worths.length; j++) {
        plain[j] = fill.blanksWorth(bench.room(j));
        worths[j] = fill.worth(j);
      }
      boolean tighter = bound.tighten(prices, worths, plain);
      boolean[] coil = bound.mayCoil(worths, plain);
      for (int j = 0; j < worths.length; j++) {
        if (!coil[j]) {
          worths[j] = plain[j];
          fill.withoutCoil(j);
        }
      }
      int from = worths.length - bound.lengths(worths.length);
      double ratio = sum(worths, from) / Math.max(1.0, (double) dot(prices, bound.demand()));
      if (tighter || ratio < best || price.length == 0) {
        best = ratio;
        price = prices;
        worth = worths;
        mayCoil = coil;
      }
      if (giveUp.getAsBoolean()) {
        break;
      }
      step(v, bound.demand(), from, 0.15 * Math.pow(0.95, round), round * 2 >= rounds);
    }
    fill.at(price);
    return bound.answer();
  }

  private double[] start(int[] demand) {
    double[] v = new double[bench.kinds()];
    for (int k = 0; k < v.length; k++) {
      double length = k == bench.ring() ? bench.turn() * 1.05 : bench.piece()[k];
      v[k] = demand[k] > 0 ? length : 0;
    }
    return v;
  }

  private void step(double[] v, int[] demand, int from, double stride, boolean keep) {
    double[] all = new double[v.length];
    double[] one = new double[v.length];
    for (int j = from; j < bench.size(); j++) {
      Arrays.fill(one, 0);
      fill.pieces(j, one);
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
