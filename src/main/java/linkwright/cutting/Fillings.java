package linkwright.cutting;

/**
 * Every sensible way to cut one length, none of it more than is still wanted: each number of turns,
 * with it all counts of the longer blanks, and the shortest blank taking what then remains. Ways
 * that lose more than a limit by the prices are passed over without being built.
 */
final class Fillings {
  /** Is shown a filling, in an array that is used again, and what it loses; false breaks off. */
  interface Visitor {
    boolean shown(int[] pieces, long loss);
  }

  /** Looks at one length, so that the caller can be asked between lengths whether to go on. */
  private static final int MOST_LOOKS = 300_000;

  private final Bench bench;
  private final Prices prices;
  private final Fill fill;
  private final int[] pieces;
  private int[] wanted = {};
  private Visitor visitor = (filling, loss) -> true;
  private long worth;
  private long limit;
  private int looks;

  Fillings(Bench bench, Prices prices) {
    this.bench = bench;
    this.prices = prices;
    this.fill = prices.fill();
    this.pieces = new int[bench.kinds()];
  }

  /** From now on passes over what loses more. */
  void limitLossTo(long most) {
    limit = most;
  }

  /** Shows each filling of the length; false when not all were shown or found too poor. */
  boolean each(int length, int[] stillWanted, boolean mayCoil, long mostLoss, Visitor shown) {
    wanted = stillWanted;
    visitor = shown;
    worth = prices.worth[length];
    limit = mostLoss;
    looks = 0;
    int ring = bench.ring();
    long turns = mayCoil ? Math.min(wanted[ring], bench.mostTurns(length)) : 0;
    for (long r = turns; r > 0; r--) {
      pieces[ring] = (int) r;
      long room = bench.room(length) - bench.tail() - r * bench.turn();
      if (!blanks(0, room, r * prices.price[ring])) {
        return false;
      }
    }
    pieces[ring] = 0;
    return blanks(0, bench.room(length), 0);
  }

  private boolean blanks(int kind, long room, long value) {
    if (++looks > MOST_LOOKS) {
      return false;
    }
    if (worth - value - fill.blanksWorth(room) > limit) {
      return true;
    }
    if (kind == bench.ring()) {
      return worth - value > limit || visitor.shown(pieces, worth - value);
    }
    int most = (int) Math.min(wanted[kind], room / bench.piece()[kind]);
    int least = kind == bench.ring() - 1 ? most : 0;
    for (int n = most; n >= least; n--) {
      pieces[kind] = n;
      long left = room - n * bench.piece()[kind];
      if (!blanks(kind + 1, left, value + n * prices.price[kind])) {
        return false;
      }
    }
    return true;
  }
}
