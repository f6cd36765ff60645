package linkwright.cutting;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The two questions that every plan asks of one wire: how high up a {@link Ladder} one can go, and
 * from how few lengths a demand can be cut. A bound from above by {@link Prices}, a plan from below
 * by {@link Greedy}, and {@link Search} between the two.
 */
final class Best {
  private static final int SMALL = 40;
  private static final long SMALL_STEPS = 100_000;
  private static final int GO_BACK = 30;
  private static final int COIL_TRIES = 3;
  private static final long STEPS = 3_000;
  private static final double[] IN_STEP = {3e-5, 3e-4, 3e-6, 3e-3};

  private final BooleanSupplier giveUp;

  Best(BooleanSupplier giveUp) {
    this.giveUp = giveUp;
  }

  /**
   * A level, a way to cut it, and whether none higher can be cut; with the prices that said so,
   * where any were needed.
   */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Level(int level, int[][] cut, boolean proved, Optional<Prices> prices) {
    /** A way to cut that is known without a search. */
    static Level of(int[][] cut) {
      return new Level(1, cut, true, Optional.empty());
    }
  }

  /** A way to cut and whether none opens fewer lengths. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Way(int[][] cut, boolean proved) {}

  /** A way to cut, whether none opens fewer lengths, and whether none of those has fewer coils. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Thrift(int[][] cut, boolean lengthsProved, boolean coilsProved) {}

  private enum Answer {
    FOUND,
    IMPOSSIBLE,
    UNKNOWN
  }

  Level highest(Bench bench, Ladder ladder) {
    if (bench.size() == 0) {
      return new Level(0, new int[0][bench.kinds()], true, Optional.empty());
    }
    int low = greedyLevel(bench, ladder);
    int[][] cut = Greedy.cut(bench, ladder.at(low));
    if (low == ladder.top()) {
      return new Level(low, cut, true, Optional.empty());
    }
    Prices prices = new Prices(bench);
    int high = prices.highestLevel(ladder, giveUp);
    Search search = new Search(bench, prices, giveUp);
    int reach = high; // above this nothing was found, though it may be possible
    int down = 1;
    int next = high;
    while (low < reach && !giveUp.getAsBoolean()) {
      Answer answer = attempt(bench, search, ladder.at(next), bench.size());
      if (answer == Answer.FOUND) {
        low = next;
        cut = copy(search.found());
      } else {
        reach = next - 1;
        if (answer == Answer.IMPOSSIBLE) {
          high = next - 1;
        }
      }
      next =
          answer == Answer.FOUND || reach - down < low ? (low + reach + 1) / 2 : reach - down + 1;
      down *= 2;
    }
    return new Level(low, cut, low == high, Optional.of(prices));
  }

  /**
   * How thriftily the demand can be cut, given a way to cut as much or more: from the fewest
   * lengths, and from those with the fewest coils.
   */
  Thrift thriftiest(Bench bench, int[] demand, Level known) {
    int[][] start = trimmed(known.cut(), demand);
    if (opened(start) == 0) {
      return new Thrift(start, true, true);
    }
    int[][] quick = Greedy.cut(bench, demand);
    boolean quicker = quick.length > 0 && opened(quick) <= opened(start);
    int atLeast = known.prices().map(prices -> prices.lengthsNeeded(demand)).orElse(1);
    Way lengths = fewestLengths(bench, demand, quicker ? quick : start, atLeast);
    int opened = opened(lengths.cut());
    Bench longest = bench.longest(opened);
    Way coils = fewestCoils(longest, demand, ontoLongest(bench, lengths.cut(), opened));
    return new Thrift(onto(bench.size(), coils.cut()), lengths.proved(), coils.proved());
  }

  private Way fewestLengths(Bench bench, int[] demand, int[][] known, int atLeast) {
    int[][] cut = known;
    int high = opened(cut);
    if (high <= atLeast) {
      return new Way(cut, true);
    }
    Prices prices = new Prices(bench);
    int low = prices.fewestLengths(demand, bench.size(), giveUp);
    int proved = low;
    while (low < high && !giveUp.getAsBoolean()) {
      Bench longest = bench.longest(low);
      Search search = new Search(longest, prices.forLongest(longest), giveUp);
      Answer answer = attempt(longest, search, demand, low);
      if (answer == Answer.FOUND) {
        cut = onto(bench.size(), search.found());
        high = opened(cut);
      } else {
        if (answer == Answer.IMPOSSIBLE && proved == low) {
          proved = low + 1;
        }
        low = proved == low + 1 ? proved : (low + high + 1) / 2;
      }
    }
    return new Way(cut, proved >= high);
  }

  private Way fewestCoils(Bench bench, int[] demand, int[][] known) {
    int[][] cut = known;
    int high = coils(bench, cut);
    int proved = turnsNeed(bench, demand[bench.ring()]);
    int coils = proved;
    int most = bench.size() > SMALL ? 1 : COIL_TRIES;
    for (int tries = 0; proved < high && tries < most && !giveUp.getAsBoolean(); tries++) {
      Prices prices = new Prices(bench);
      int bound = prices.fewestCoils(demand, coils, giveUp);
      if (coils == proved) {
        proved = bound;
      }
      coils = bound;
      if (coils >= high) {
        break;
      }
      Search search = search(bench, demand, prices);
      Answer answer = attempt(bench, search, demand, coils);
      if (answer == Answer.FOUND) {
        cut = copy(search.found());
        high = coils(bench, cut);
      } else {
        if (answer == Answer.IMPOSSIBLE && proved == coils) {
          proved = coils + 1;
        }
        coils = proved == coils + 1 ? proved : (coils + high + 1) / 2;
      }
    }
    return new Way(cut, proved >= high);
  }

  /** Few lengths are searched to the end, so that any of them must be free to carry a coil. */
  private Search search(Bench bench, int[] demand, Prices guided) {
    if (bench.size() > SMALL) {
      return new Search(bench, guided, giveUp);
    }
    Prices free = new Prices(bench);
    free.highestLevel(new Ladder.Fixed(demand), giveUp);
    return new Search(bench, free, giveUp);
  }

  /** The fewest coils with turns enough, were there nothing else to cut. */
  private static int turnsNeed(Bench bench, int rings) {
    long left = rings;
    int coils = 0;
    for (int j = bench.size() - 1; j >= 0 && left > 0; j--) {
      left -= bench.mostTurns(j);
      coils++;
    }
    return coils;
  }

  static int coils(Bench bench, int[][] cut) {
    int coils = 0;
    for (int[] pieces : cut) {
      coils += pieces[bench.ring()] > 0 ? 1 : 0;
    }
    return coils;
  }

  private Answer attempt(Bench bench, Search search, int[] demand, int coils) {
    if (bench.size() <= SMALL) {
      if (search.finds(demand, coils, bench.size(), SMALL_STEPS, IN_STEP[0])) {
        return Answer.FOUND;
      }
      if (!search.brokeOff()) {
        return Answer.IMPOSSIBLE;
      }
    }
    for (double inStep : IN_STEP) {
      if (search.finds(demand, coils, GO_BACK, STEPS, inStep)) {
        return Answer.FOUND;
      }
    }
    return Answer.UNKNOWN;
  }

  private static int greedyLevel(Bench bench, Ladder ladder) {
    int low = 0;
    int high = ladder.top();
    int middle = high;
    while (low < high) {
      if (Greedy.cut(bench, ladder.at(middle)).length > 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
      middle = (low + high + 1) >>> 1;
    }
    return low;
  }

  static int opened(int[][] cut) {
    int opened = 0;
    for (int[] pieces : cut) {
      for (int many : pieces) {
        if (many > 0) {
          opened++;
          break;
        }
      }
    }
    return opened;
  }

  /** The cut without what it makes beyond the demand. */
  private static int[][] trimmed(int[][] cut, int[] demand) {
    int[][] trimmed = copy(cut);
    int[] left = demand.clone();
    for (int[] pieces : trimmed) {
      for (int k = 0; k < pieces.length; k++) {
        pieces[k] = Math.min(pieces[k], left[k]);
        left[k] -= pieces[k];
      }
    }
    return trimmed;
  }

  private static int[][] copy(int[][] cut) {
    int[][] copy = new int[cut.length][];
    for (int j = 0; j < cut.length; j++) {
      copy[j] = cut[j].clone();
    }
    return copy;
  }

  /** The opened lengths' pieces on the longest lengths: each load on one no shorter than before. */
  private static int[][] ontoLongest(Bench bench, int[][] cut, int opened) {
    int[][] loads = new int[opened][];
    int next = opened;
    for (int j = bench.size() - 1; j >= 0; j--) {
      if (opened(new int[][] {cut[j]}) > 0) {
        loads[--next] = cut[j].clone();
      }
    }
    return loads;
  }

  private static int[][] onto(int size, int[][] longest) {
    int[][] all = new int[size][longest.length == 0 ? 0 : longest[0].length];
    for (int j = 0; j < longest.length; j++) {
      all[size - longest.length + j] = longest[j].clone();
    }
    return all;
  }
}
