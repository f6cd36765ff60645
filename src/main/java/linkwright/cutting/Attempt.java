package linkwright.cutting;

import java.util.function.BooleanSupplier;

/** How hard one demand is searched for: few lengths to the end, many by a few good descents. */
final class Attempt {
  /** Up to so many lengths are searched through to the end. */
  private static final int SMALL = 40;

  private static final long SMALL_STEPS = 100_000;
  private static final int GO_BACK = 30;
  private static final long STEPS = 3_000;

  /** How strictly the kinds are kept in step, tried in this order; found by trying. */
  private static final double[] IN_STEP = {3e-5, 3e-4, 3e-6, 3e-3};

  private final Bench bench;
  private final Search search;

  enum Answer {
    FOUND,
    IMPOSSIBLE,
    UNKNOWN
  }

  Attempt(Bench bench, Prices prices, BooleanSupplier giveUp) {
    this.bench = bench;
    this.search = new Search(bench, prices, giveUp);
  }

  static boolean small(Bench bench) {
    return bench.size() <= SMALL;
  }

  Answer at(int[] demand, int coils) {
    if (small(bench)) {
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

  /** The pieces cut from each length by the last answer, if it was found. */
  int[][] found() {
    return Loads.copy(search.found());
  }
}
