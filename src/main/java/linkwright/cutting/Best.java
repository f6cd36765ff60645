package linkwright.cutting;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * How high up a {@link Ladder} one can go: a bound from above by {@link Prices}, a plan from below
 * by {@link Greedy}, and {@link Search} between the two.
 */
final class Best {
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
    Attempt attempt = new Attempt(bench, prices, giveUp);
    int reach = high; // above this nothing was found, though it may be possible
    int down = 1;
    int next = high;
    while (low < reach && !giveUp.getAsBoolean()) {
      Attempt.Answer answer = attempt.at(ladder.at(next), bench.size());
      if (answer == Attempt.Answer.FOUND) {
        low = next;
        cut = attempt.found();
      } else {
        reach = next - 1;
        if (answer == Attempt.Answer.IMPOSSIBLE) {
          high = next - 1;
        }
      }
      next =
          answer == Attempt.Answer.FOUND || reach - down < low
              ? (low + reach + 1) / 2
              : reach - down + 1;
      down *= 2;
    }
    return new Level(low, cut, low == high, Optional.of(prices));
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
}
