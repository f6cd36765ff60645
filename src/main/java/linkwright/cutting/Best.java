package linkwright.cutting;

import java.util.function.BooleanSupplier;

/**
 * The two questions that every plan asks of one wire: how high up a {@link Ladder} one can go, and
 * from how few lengths a demand can be cut. A bound from above by {@link Prices}, a plan from below
 * by {@link Greedy}, and {@link Search} between the two.
 */
final class Best {
  private static final int SMALL = 40;
  private static final long SMALL_STEPS = 400_000;
  private static final int GO_BACK = 30;
  private static final long STEPS = 1_500;
  private static final double[] IN_STEP = {3e-5, 3e-4, 3e-6, 3e-3};

  private final BooleanSupplier giveUp;

  Best(BooleanSupplier giveUp) {
    this.giveUp = giveUp;
  }

  /** A level, a way to cut it, and whether none higher can be cut. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Level(int level, int[][] cut, boolean proved) {}

  /** A way to cut and whether none opens fewer lengths. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Way(int[][] cut, boolean proved) {}

  private enum Answer {
    FOUND,
    IMPOSSIBLE,
    UNKNOWN
  }

  Level highest(Bench bench, Ladder ladder) {
    if (bench.size() == 0) {
      return new Level(0, new int[0][bench.kinds()], true);
    }
    int low = greedyLevel(bench, ladder);
    int[][] cut = Greedy.cut(bench, ladder.at(low));
    if (low == ladder.top()) {
      return new Level(low, cut, true);
    }
    Prices prices = new Prices(bench);
    int high = prices.highestLevel(ladder, giveUp);
    Search search = new Search(bench, prices, giveUp);
    int reach = high; // above this nothing was found, though it may be possible
    int down = 1;
    int next = high;
    while (low < reach && !giveUp.getAsBoolean()) {
      Answer answer = attempt(bench, search, ladder.at(next));
      if (answer == Answer.FOUND) {
        low = next;
        cut = copy(search.found());
      } else {
        reach = next - 1;
        if (answer == Answer.IMPOSSIBLE) {
          high = next - 1;
        }
      }
      next = answer == Answer.FOUND || reach - down <= low ? (low + reach + 1) / 2 : reach - down;
      down *= 2;
    }
    return new Level(low, cut, low == high);
  }

  /** From how few of the lengths the demand can be cut, given one way to cut it. */
  Way fewest(Bench bench, int[] demand, int[][] known) {
    if (bench.size() == 0) {
      return new Way(known, true);
    }
    int[][] cut = known;
    int[][] quick = Greedy.cut(bench, demand);
    if (quick.length > 0 && opened(quick) < opened(cut)) {
      cut = quick;
    }
    int high = opened(cut);
    if (high <= 1) {
      return new Way(cut, true);
    }
    Prices prices = new Prices(bench);
    int low = prices.fewestLengths(demand, 1, giveUp);
    int proved = low;
    while (low < high && !giveUp.getAsBoolean()) {
      Bench longest = bench.longest(low);
      Prices own = new Prices(longest);
      own.highestLevel(new Ladder.Fixed(demand), giveUp);
      Search search = new Search(longest, own, giveUp);
      Answer answer = attempt(longest, search, demand);
      if (answer == Answer.FOUND) {
        cut = onto(bench.size(), search.found());
        high = opened(cut);
      } else {
        if (answer == Answer.IMPOSSIBLE && proved == low) {
          proved = low + 1;
        }
        low = low + 1 == high || proved == low + 1 ? low + 1 : (low + high + 1) / 2;
      }
    }
    return new Way(cut, proved >= high);
  }

  private Answer attempt(Bench bench, Search search, int[] demand) {
    if (bench.size() <= SMALL) {
      if (search.finds(demand, bench.size(), SMALL_STEPS, IN_STEP[0])) {
        return Answer.FOUND;
      }
      if (!search.brokeOff()) {
        return Answer.IMPOSSIBLE;
      }
    }
    for (double inStep : IN_STEP) {
      if (search.finds(demand, GO_BACK, STEPS, inStep)) {
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

  private static int[][] copy(int[][] cut) {
    int[][] copy = new int[cut.length][];
    for (int j = 0; j < cut.length; j++) {
      copy[j] = cut[j].clone();
    }
    return copy;
  }

  private static int[][] onto(int size, int[][] longest) {
    int kinds = longest.length == 0 ? 0 : longest[0].length;
    int[][] all = new int[size][kinds];
    for (int j = 0; j < longest.length; j++) {
      all[size - longest.length + j] = longest[j].clone();
    }
    return all;
  }
}
