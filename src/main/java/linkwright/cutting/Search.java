package linkwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Looks for a way to cut a demand from lengths, length by length from the shortest, choosing
 * fillings that lose little by the {@link Prices} and keep the kinds in step. The last lengths are
 * searched through with going back; when that is all of them and nothing broke off, not finding is
 * a proof.
 */
final class Search {
  private static final int MOST_FILLINGS = 50_000;

  private final Bench bench;
  private final Prices prices;
  private final BooleanSupplier giveUp;
  private final Fillings fillings;
  private final long[] worthFrom;
  private final double[][] expectedFrom;
  private final int[][] cut;
  private final Set<Long> hopeless = new HashSet<>();

  private int[] demand = {};
  private double strictness;
  private boolean brokeOff;
  private boolean shortened;
  private long steps;

  Search(Bench bench, Prices prices, BooleanSupplier giveUp) {
    this.bench = bench;
    this.prices = prices;
    this.giveUp = giveUp;
    this.fillings = new Fillings(bench, prices);
    this.worthFrom = new long[bench.size() + 1];
    this.expectedFrom = new double[bench.size() + 1][bench.kinds()];
    this.cut = new int[bench.size()][bench.kinds()];
    for (int j = bench.size() - 1; j >= 0; j--) {
      worthFrom[j] = worthFrom[j + 1] + prices.worth[j];
      for (int k = 0; k < bench.kinds(); k++) {
        expectedFrom[j][k] = expectedFrom[j + 1][k] + prices.average()[j][k];
      }
    }
  }

  /** The pieces cut from each length by the last search that found a way. */
  int[][] found() {
    return cut;
  }

  /** Whether the last search broke off, so that not finding proves nothing. */
  boolean brokeOff() {
    return brokeOff || shortened;
  }

  /**
   * @param coils on how many lengths a coil may be wound
   * @param goBack how many of the last lengths are searched through with going back
   * @param most at most so many choices there
   * @param keepInStep how much keeping the kinds in step counts against loss
   */
  boolean finds(int[] pieces, int coils, int goBack, long most, double keepInStep) {
    int first = Math.max(0, bench.size() - goBack);
    demand = pieces;
    strictness = keepInStep;
    brokeOff = false;
    shortened = first > 0;
    steps = most;
    hopeless.clear();
    int[] wanted = pieces.clone();
    int left = coils;
    for (int j = 0; j < first; j++) {
      if (!takeBest(j, wanted, left > 0 && prices.mayCoil[j])) {
        return false;
      }
      left -= cut[j][bench.ring()] > 0 ? 1 : 0;
    }
    return descend(first, wanted, left);
  }

  private boolean takeBest(int length, int[] wanted, boolean mayCoil) {
    long gap = worthFrom[length] - Prices.dot(prices.price, wanted);
    double[] best = {Double.POSITIVE_INFINITY};
    int[] chosen = cut[length];
    fillings.each(
        length,
        wanted,
        mayCoil,
        gap,
        (filling, loss) -> {
          double score = loss + outOfStep(length, wanted, filling);
          if (score < best[0]) {
            best[0] = score;
            System.arraycopy(filling, 0, chosen, 0, chosen.length);
            fillings.limitLossTo(Math.min(gap, (long) score));
          }
          return true;
        });
    if (best[0] == Double.POSITIVE_INFINITY || giveUp.getAsBoolean()) {
      return false;
    }
    for (int k = 0; k < wanted.length; k++) {
      wanted[k] -= chosen[k];
    }
    return true;
  }

  private double outOfStep(int length, int[] wanted, int[] filling) {
    double penalty = 0;
    for (int k = 0; k < wanted.length; k++) {
      if (demand[k] > 0) {
        double scale = expectedFrom[0][k] > 0 ? demand[k] / expectedFrom[0][k] : 0;
        double off = wanted[k] - filling[k] - scale * expectedFrom[length + 1][k];
        penalty += prices.price[k] * off * off;
      }
    }
    return strictness * penalty;
  }

  private boolean descend(int length, int[] wanted, int coils) {
    if (nothing(wanted)) {
      for (int j = length; j < cut.length; j++) {
        Arrays.fill(cut[j], 0);
      }
      return true;
    }
    if (length == bench.size()) {
      return false;
    }
    if (--steps < 0 || giveUp.getAsBoolean()) {
      brokeOff = true;
      return false;
    }
    if (worthFrom[length] < Prices.dot(prices.price, wanted)) {
      return false;
    }
    long key = key(length, coils, wanted);
    if (key >= 0 && hopeless.contains(key)) {
      return false;
    }
    for (Choice choice : choices(length, wanted, coils > 0 && prices.mayCoil[length])) {
      cut[length] = choice.pieces();
      int[] rest = wanted.clone();
      for (int k = 0; k < rest.length; k++) {
        rest[k] -= choice.pieces()[k];
      }
      if (descend(length + 1, rest, coils - (choice.pieces()[bench.ring()] > 0 ? 1 : 0))) {
        return true;
      }
      if (brokeOff) {
        return false;
      }
    }
    if (key >= 0) {
      hopeless.add(key); // a shortened look may be wrong here, but then proves nothing anyway
    }
    return false;
  }

  private List<Choice> choices(int length, int[] wanted, boolean mayCoil) {
    long gap = worthFrom[length] - Prices.dot(prices.price, wanted);
    List<Choice> all = new ArrayList<>();
    shortened |=
        !fillings.each(
            length,
            wanted,
            mayCoil,
            gap,
            (filling, loss) -> {
              all.add(new Choice(filling.clone(), loss + outOfStep(length, wanted, filling)));
              return all.size() < MOST_FILLINGS;
            });
    all.sort(Comparator.comparingDouble(Choice::score));
    return all;
  }

  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  private record Choice(int[] pieces, double score) {}

  private long key(int length, int coils, int[] wanted) {
    long key = length * (bench.size() + 1L) + Math.min(coils, bench.size());
    for (int k = 0; k < wanted.length; k++) {
      if (key > Long.MAX_VALUE / (demand[k] + 2)) {
        return -1;
      }
      key = key * (demand[k] + 1) + wanted[k];
    }
    return key;
  }

  private static boolean nothing(int[] wanted) {
    for (int left : wanted) {
      if (left > 0) {
        return false;
      }
    }
    return true;
  }
}
