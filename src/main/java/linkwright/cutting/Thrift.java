package linkwright.cutting;

import java.util.function.BooleanSupplier;

/** How a demand that can be cut is cut with least waste. */
final class Thrift {
  private static final int COIL_TRIES = 3;

  private final BooleanSupplier giveUp;

  Thrift(BooleanSupplier giveUp) {
    this.giveUp = giveUp;
  }

  /** A way to cut and whether none opens fewer lengths. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  private record Way(int[][] cut, boolean proved) {}

  /** A way to cut, whether none opens fewer lengths, and whether none of those has fewer coils. */
  @SuppressWarnings("ArrayRecordComponent") // a working value, never compared
  record Outcome(int[][] cut, boolean lengthsProved, boolean coilsProved) {}

  /**
   * How thriftily the demand can be cut, given a way to cut as much or more: from the fewest
   * lengths, and from those with the fewest coils.
   */
  Outcome best(Bench bench, int[] demand, Best.Level known) {
    int[][] start = Loads.trimmed(known.cut(), demand);
    if (Loads.opened(start) == 0) {
      return new Outcome(start, true, true);
    }
    int[][] quick = Greedy.cut(bench, demand);
    boolean quicker = quick.length > 0 && Loads.opened(quick) <= Loads.opened(start);
    int atLeast = known.prices().map(prices -> prices.lengthsNeeded(demand)).orElse(1);
    Way lengths = fewestLengths(bench, demand, quicker ? quick : start, atLeast);
    int opened = Loads.opened(lengths.cut());
    Bench longest = bench.longest(opened);
    Way coils = fewestCoils(longest, demand, Loads.ontoLongest(bench, lengths.cut(), opened));
    return new Outcome(Loads.onto(bench.size(), coils.cut()), lengths.proved(), coils.proved());
  }

  private Way fewestLengths(Bench bench, int[] demand, int[][] known, int atLeast) {
    int[][] cut = known;
    int high = Loads.opened(cut);
    if (high <= atLeast) {
      return new Way(cut, true);
    }
    Prices prices = new Prices(bench);
    int low = prices.fewestLengths(demand, bench.size(), giveUp);
    int proved = low;
    while (low < high && !giveUp.getAsBoolean()) {
      Bench longest = bench.longest(low);
      Attempt attempt = new Attempt(longest, prices.forLongest(longest), giveUp);
      Attempt.Answer answer = attempt.at(demand, low);
      if (answer == Attempt.Answer.FOUND) {
        cut = Loads.onto(bench.size(), attempt.found());
        high = Loads.opened(cut);
      } else {
        if (answer == Attempt.Answer.IMPOSSIBLE && proved == low) {
          proved = low + 1;
        }
        low = proved == low + 1 ? proved : (low + high + 1) / 2;
      }
    }
    return new Way(cut, proved >= high);
  }

  private Way fewestCoils(Bench bench, int[] demand, int[][] known) {
    int[][] cut = known;
    int high = Loads.coils(bench, cut);
    int proved = turnsNeed(bench, demand[bench.ring()]);
    int coils = proved;
    int most = !Attempt.small(bench) ? 1 : COIL_TRIES;
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
      Attempt attempt = attempt(bench, demand, prices);
      Attempt.Answer answer = attempt.at(demand, coils);
      if (answer == Attempt.Answer.FOUND) {
        cut = attempt.found();
        high = Loads.coils(bench, cut);
      } else {
        if (answer == Attempt.Answer.IMPOSSIBLE && proved == coils) {
          proved = coils + 1;
        }
        coils = proved == coils + 1 ? proved : (coils + high + 1) / 2;
      }
    }
    return new Way(cut, proved >= high);
  }

  /** Few lengths are searched to the end, so that any of them must be free to carry a coil. */
  private Attempt attempt(Bench bench, int[] demand, Prices guided) {
    if (!Attempt.small(bench)) {
      return new Attempt(bench, guided, giveUp);
    }
    Prices free = new Prices(bench);
    free.highestLevel(new Ladder.Fixed(demand), giveUp);
    return new Attempt(bench, free, giveUp);
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
}
