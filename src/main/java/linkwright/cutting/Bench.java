package linkwright.cutting;

/**
 * Lengths and pieces in whole micrometres, as the search sees them. A blank stands with its kerf,
 * and a length that yields a blank is one kerf longer than it is, for the last cut takes only what
 * remains.
 *
 * @param stock usable lengths, ascending
 * @param piece blank and kerf for each size, longest first
 * @param kerf one kerf
 * @param turn one turn of the ring coil
 * @param tail the tail of a coil
 */
@SuppressWarnings("ArrayRecordComponent") // never compared and never handed out of the package
record Bench(long[] stock, long[] piece, long kerf, long turn, long tail) {

  /** Kinds of piece: every size of blank, and last the ring. */
  int kinds() {
    return piece.length + 1;
  }

  int ring() {
    return piece.length;
  }

  int size() {
    return stock.length;
  }

  /** Room for blanks that each bring their kerf. */
  long room(int length) {
    return stock[length] + kerf;
  }

  /** The most turns that one coil from this length can have. */
  long mostTurns(int length) {
    return Math.max(0, (stock[length] - tail) / turn);
  }

  /** Whether the pieces come out of this length. */
  boolean fits(int length, int[] pieces) {
    long used = 0;
    for (int k = 0; k < piece.length; k++) {
      used += piece[k] * pieces[k];
    }
    boolean coil = pieces[ring()] > 0;
    if (coil && used == 0) {
      return pieces[ring()] <= mostTurns(length);
    }
    return used + (coil ? tail + turn * pieces[ring()] : 0) <= room(length);
  }

  /** The longest {@code count} of the lengths. */
  Bench longest(int count) {
    long[] kept = new long[count];
    System.arraycopy(stock, stock.length - count, kept, 0, count);
    return new Bench(kept, piece, kerf, turn, tail);
  }
}
