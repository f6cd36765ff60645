package linkwright.cutting;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * What prices prove about one question. All rest on the same law: under any prices, the pieces cut
 * are worth no more than the dearest fillings of the lengths they are cut from.
 */
abstract class Bounds {
  /**
   * Takes one more set of prices into account.
   *
   * @param worths the dearest filling of each length
   * @param plain the dearest filling without a coil
   * @return whether the answer has become tighter
   */
  abstract boolean tighten(long[] prices, long[] worths, long[] plain);

  /** What is to be cut as the answer stands. */
  abstract int[] demand();

  /** The answer as it stands. */
  abstract int answer();

  /** How many of the longest lengths are cut as the answer stands. */
  int lengths(int all) {
    return all;
  }

  /** Which lengths may carry a coil as the answer stands. */
  boolean[] mayCoil(long[] worths, long[] plain) {
    boolean[] all = new boolean[worths.length];
    Arrays.fill(all, true);
    return all;
  }

  /** The lengths that gain most by a coil. */
  static boolean[] gainMost(long[] worths, long[] plain, int from, int coils) {
    boolean[] chosen = new boolean[worths.length];
    long[] gains = new long[worths.length - from];
    Arrays.setAll(gains, i -> worths[from + i] - plain[from + i]);
    Arrays.sort(gains);
    int many = Math.min(coils, gains.length);
    long least = many == 0 ? Long.MAX_VALUE : gains[gains.length - many];
    int left = many;
    for (int j = worths.length - 1; j >= from && left > 0; j--) {
      if (worths[j] - plain[j] > least) {
        chosen[j] = true;
        left--;
      }
    }
    for (int j = worths.length - 1; j >= from && left > 0; j--) {
      if (worths[j] - plain[j] == least) {
        chosen[j] = true;
        left--;
      }
    }
    return chosen;
  }

  /** How high one can go on a ladder with all lengths. */
  static final class HighestLevel extends Bounds {
    private final Ladder ladder;
    private int level;

    HighestLevel(Ladder ladder) {
      this.ladder = ladder;
      this.level = ladder.top();
    }

    @Override
    boolean tighten(long[] prices, long[] worths, long[] plain) {
      long all = Prices.sum(worths, 0);
      int low = 0;
      int high = level;
      while (low < high) {
        int middle = (low + high + 1) >>> 1;
        if (Prices.dot(prices, ladder.at(middle)) <= all) {
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
    int[] demand() {
      return ladder.at(level);
    }

    @Override
    int answer() {
      return level;
    }
  }

  /** On how few lengths a coil is wound, with all lengths cut. */
  static final class FewestCoils extends Bounds {
    private final int[] demand;
    private int count;

    FewestCoils(int[] demand, int atLeast) {
      this.demand = demand;
      this.count = atLeast;
    }

    @Override
    boolean tighten(long[] prices, long[] worths, long[] plain) {
      long lacking = Prices.dot(prices, demand) - Prices.sum(plain, 0);
      long[] gains = new long[worths.length];
      Arrays.setAll(gains, j -> worths[j] - plain[j]);
      Arrays.sort(gains);
      int least = 0;
      while (lacking > 0 && least < gains.length) {
        lacking -= gains[gains.length - ++least];
      }
      boolean tighter = least > count;
      count = Math.max(count, least);
      return tighter;
    }

    @Override
    boolean[] mayCoil(long[] worths, long[] plain) {
      return gainMost(worths, plain, 0, count);
    }

    @Override
    int[] demand() {
      return demand;
    }

    @Override
    int answer() {
      return count;
    }
  }

  /** From how few of the longest lengths all is cut, when only so many carry a coil. */
  static final class FewestLengths extends Bounds {
    private final int[] demand;
    private final int coils;
    private int count = 1;

    FewestLengths(int[] demand, int coils) {
      this.demand = demand;
      this.coils = coils;
    }

    @Override
    boolean tighten(long[] prices, long[] worths, long[] plain) {
      long needed = Prices.dot(prices, demand);
      PriorityQueue<Long> gains = new PriorityQueue<>();
      long all = 0;
      int least = 0;
      while (all < needed && least < worths.length) {
        int j = worths.length - ++least;
        all += worths[j];
        if (coils < worths.length) {
          gains.add(worths[j] - plain[j]);
          if (gains.size() > coils) {
            all -= gains.remove();
          }
        }
      }
      if (all < needed) {
        least = worths.length;
      }
      boolean tighter = least > count;
      count = Math.max(count, least);
      return tighter;
    }

    @Override
    int lengths(int all) {
      return Math.min(count, all);
    }

    @Override
    boolean[] mayCoil(long[] worths, long[] plain) {
      return coils >= worths.length
          ? super.mayCoil(worths, plain)
          : gainMost(worths, plain, Math.max(0, worths.length - count), coils);
    }

    @Override
    int[] demand() {
      return demand;
    }

    @Override
    int answer() {
      return count;
    }
  }
}
