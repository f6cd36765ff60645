package linkwright.cutting;

/**
 * The dearest filling of a length when each kind of piece has a price: what a length can be worth
 * at most. Blanks by the textbook table over all lengths at once, the coil by trying its turns.
 *
 * <p>Prices and sums are whole numbers, so the bound built on them is exact. Lengths past the
 * table's end are valued at the best price per length, which is a bound too.
 */
final class Fill {
  private static final int MOST_CELLS = 1 << 20;

  private final Bench bench;
  private final long grid;
  private final long[] worth;
  private final byte[] taken;
  private final int[] improvedAt;
  private final long[] turns;
  private long[] price = {};
  private int dearest;

  Fill(Bench bench) {
    this.bench = bench;
    long common = 0;
    for (long piece : bench.piece()) {
      common = gcd(piece, common);
    }
    this.grid = Math.max(1, common);
    long longest = bench.size() == 0 ? 0 : bench.room(bench.size() - 1);
    int cells = (int) Math.min(MOST_CELLS, longest / grid + 1);
    this.worth = new long[bench.piece().length == 0 ? 1 : cells];
    this.taken = new byte[worth.length];
    this.improvedAt = new int[worth.length];
    this.turns = new long[bench.size()];
  }

  /** How much one set of prices costs to look at, in cells. */
  int cells() {
    return worth.length;
  }

  void at(long[] prices) {
    price = prices;
    int blanks = bench.piece().length;
    int[] step = new int[blanks];
    dearest = 0;
    for (int k = 0; k < blanks; k++) {
      step[k] = (int) Math.min(Integer.MAX_VALUE, bench.piece()[k] / grid);
      if ((double) price[k] * bench.piece()[dearest] > (double) price[dearest] * bench.piece()[k]) {
        dearest = k;
      }
    }
    for (int cell = 0; cell < worth.length; cell++) {
      long best = cell == 0 ? 0 : worth[cell - 1];
      byte by = -1;
      for (int k = 0; k < blanks; k++) {
        if (step[k] <= cell) {
          long value = worth[cell - step[k]] + price[k];
          if (value > best) {
            best = value;
            by = (byte) k;
          }
        }
      }
      worth[cell] = best;
      taken[cell] = by;
      improvedAt[cell] = by >= 0 || cell == 0 ? cell : improvedAt[cell - 1];
    }
  }

  /** The most that this length can be worth. */
  long worth(int length) {
    long best = blanksWorth(bench.room(length));
    turns[length] = 0;
    long most = price[bench.ring()] > 0 ? bench.mostTurns(length) : 0;
    if (most > MOST_CELLS) {
      return Math.max(best, coilBound(length));
    }
    long room = bench.room(length) - bench.tail();
    double perLength =
        bench.piece().length == 0 ? 0 : (double) price[dearest] / bench.piece()[dearest];
    double gain = price[bench.ring()] - perLength * bench.turn();
    for (long i = 1; i <= most; i++) {
      long r = gain > 0 ? most + 1 - i : i; // so that the bound only falls
      if (perLength * room + gain * r + 1 < best) {
        break;
      }
      long value = r * price[bench.ring()] + blanksWorth(room - r * bench.turn());
      if (value > best) {
        best = value;
        turns[length] = r;
      }
    }
    return best;
  }

  /** Takes the coil back out of what was last valued as the length's dearest filling. */
  void withoutCoil(int length) {
    turns[length] = 0;
  }

  /** Adds the pieces of the dearest filling, as last valued, to {@code pieces}. */
  void pieces(int length, double[] pieces) {
    long coil = turns[length];
    pieces[bench.ring()] += coil;
    walk(bench.room(length) - (coil > 0 ? bench.tail() + coil * bench.turn() : 0), pieces);
  }

  private void walk(long room, double[] pieces) {
    long cell = room / grid;
    if (cell >= worth.length) {
      long bare = bench.piece().length == 0 ? 0 : bench.piece()[dearest] / grid;
      if (bare == 0) {
        return;
      }
      long many = (cell - worth.length + bare) / bare;
      pieces[dearest] += many;
      cell = Math.max(0, cell - many * bare);
    }
    int at = improvedAt[(int) cell];
    while (at > 0) {
      int kind = taken[at];
      pieces[kind]++;
      at = improvedAt[at - (int) (bench.piece()[kind] / grid)];
    }
  }

  long blanksWorth(long room) {
    long cell = room / grid;
    if (cell < worth.length) {
      return worth[(int) cell];
    }
    return bench.piece().length == 0
        ? 0
        : ceilingShare(price[dearest], room, bench.piece()[dearest]);
  }

  private long coilBound(int length) {
    long room = bench.room(length);
    long byTurns = ceilingShare(price[bench.ring()], room, bench.turn());
    return bench.piece().length == 0
        ? byTurns
        : Math.max(byTurns, ceilingShare(price[dearest], room, bench.piece()[dearest]));
  }

  /** price × room / piece, rounded up by more than doubles can err. */
  private static long ceilingShare(long price, long room, long piece) {
    return (long) ((double) price * room / piece * (1 + 1e-12)) + 1;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
