package linkwright.cutting;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * The lengths of one wire and what is wanted from it, in whole micrometres. A blank stands with its
 * kerf, and a length that yields a blank is one kerf longer than it is, for the last cut takes only
 * what remains. Pieces are counted in arrays: every size of blank, and last the rings.
 *
 * @param lengths longest first, so that what any of them yield the first as many yield too
 * @param blank each size with its kerf, longest first
 * @param kerf one kerf
 * @param turn one turn of the ring coil
 * @param tail the tail of a coil
 * @param wanted how many of each kind of piece
 * @param perRepeat how many of each a repeat of the chain takes
 * @param spare how many of those wanted are spare
 */
@SuppressWarnings("ArrayRecordComponent") // never compared and never handed out of the package
record WireToCut(
    long[] lengths,
    long[] blank,
    long kerf,
    long turn,
    long tail,
    int[] wanted,
    int[] perRepeat,
    int[] spare) {

  int kinds() {
    return wanted.length;
  }

  /** The place of the rings among the kinds. */
  int ring() {
    return blank.length;
  }

  /** Room for blanks that each bring their kerf. */
  long room(int length) {
    return lengths[length] + kerf;
  }

  /** What one piece takes: a blank and its kerf, or a turn. */
  long each(int kind) {
    return kind == ring() ? turn : blank[kind];
  }

  /** Wire that the blanks among the pieces take, a kerf each. */
  long ofBlanks(int[] pieces) {
    long all = 0;
    for (int k = 0; k < ring(); k++) {
      all += blank[k] * pieces[k];
    }
    return all;
  }

  /** What a coil takes beside its turns when blanks come after it: a kerf at least frees it. */
  long hold() {
    return Math.max(tail, kerf);
  }

  /** The most rings that a length gives beside its blanks; less than 0 if not even those. */
  long ringsBeside(long ofBlanks, int length) {
    if (ofBlanks > room(length)) {
      return -1;
    }
    long left = ofBlanks == 0 ? lengths[length] - tail : room(length) - ofBlanks - hold();
    return Math.max(0, left / turn);
  }

  /** Whether a length that yields these pieces yields one blank more beside them. */
  boolean holdsOneMore(int[] pieces, int kind, int length) {
    return ringsBeside(ofBlanks(pieces) + blank[kind], length) >= pieces[ring()];
  }

  /** Wire that is missing when no more than these pieces is cut: a tail for what lacks of rings. */
  long missing(int[] pieces) {
    long missing = 0;
    for (int k = 0; k < kinds(); k++) {
      missing += each(k) * Math.max(0, wanted[k] - pieces[k]);
    }
    return missing + (pieces[ring()] < wanted[ring()] ? tail : 0);
  }

  /**
   * What is to be cut when so many repeats are let go: first those of spares alone, as far as there
   * are any, then those of the chain.
   */
  int[] without(int repeats) {
    int ofSpares = Math.min(repeats, repeatsOfSpares());
    int[] pieces = new int[kinds()];
    Arrays.setAll(
        pieces,
        k ->
            Math.max(
                0,
                wanted[k]
                    - Math.min(spare[k], ofSpares * perRepeat[k])
                    - (repeats - ofSpares) * perRepeat[k]));
    return pieces;
  }

  private int repeatsOfSpares() {
    int most = 0;
    for (int k = 0; k < kinds(); k++) {
      most = Math.max(most, (spare[k] + perRepeat[k] - 1) / perRepeat[k]);
    }
    return most;
  }

  /** The repeats that are let go when no more than that is cut. */
  int lacking(CutCounts cut) {
    int[] made = cut.pieces(kinds());
    int most = repeatsOfSpares();
    for (int k = 0; k < kinds(); k++) {
      most = Math.max(most, repeatsOfSpares() + (wanted[k] + perRepeat[k] - 1) / perRepeat[k]);
    }
    return least(
        most,
        repeats -> {
          int[] pieces = without(repeats);
          boolean enough = true;
          for (int k = 0; k < kinds(); k++) {
            enough &= made[k] >= pieces[k];
          }
          return enough;
        });
  }

  /** No fewer repeats can be let go: judged by the wire in all, and by each kind alone. */
  int fewestLacking() {
    int all = lacking(new CutCounts(new int[0][]));
    return least(all, repeats -> mayYield(lengths.length, without(repeats)));
  }

  /** No fewer lengths can be enough for the pieces, judged likewise. */
  int fewestLengths(int[] pieces) {
    return least(lengths.length, count -> mayYield(count, pieces));
  }

  /** No fewer coils can be enough: so many it takes where nothing else is cut. */
  int fewestCoils(int rings) {
    return least(lengths.length, count -> yieldsAlone(ring(), count) >= rings);
  }

  private boolean mayYield(int count, int[] pieces) {
    int rings = pieces[ring()];
    long room = -ofBlanks(pieces) - turn * rings - hold() * fewestCoils(rings);
    for (int j = 0; j < count; j++) {
      room += room(j);
    }
    boolean may = room >= 0;
    for (int k = 0; may && k < kinds(); k++) {
      may = yieldsAlone(k, count) >= pieces[k];
    }
    return may;
  }

  private long yieldsAlone(int kind, int count) {
    long all = 0;
    for (int j = 0; j < count; j++) {
      all += kind == ring() ? ringsBeside(0, j) : room(j) / blank[kind];
    }
    return all;
  }

  /** The least number for which it holds, where it holds for all above; the highest if for none. */
  private static int least(int highest, IntPredicate holds) {
    int low = 0;
    int high = highest;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holds.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
