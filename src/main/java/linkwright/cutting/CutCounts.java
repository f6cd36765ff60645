package linkwright.cutting;

import java.util.Arrays;

/**
 * How many pieces of each kind are cut from each length of one wire.
 *
 * @param of for each length the pieces, rings last
 */
@SuppressWarnings("ArrayRecordComponent") // never compared and never handed out of the package
record CutCounts(int[][] of) {

  /** The lengths that anything is cut from. */
  int opened() {
    return (int) Arrays.stream(of).filter(pieces -> !none(pieces)).count();
  }

  /** The lengths that carry a coil. */
  int coils() {
    return (int) Arrays.stream(of).filter(pieces -> pieces[pieces.length - 1] > 0).count();
  }

  /** The pieces of each kind from all lengths. */
  int[] pieces(int kinds) {
    int[] all = new int[kinds];
    for (int[] pieces : of) {
      Arrays.setAll(all, k -> all[k] + pieces[k]);
    }
    return all;
  }

  /** The same and, wherever there is room, further pieces that are wanted, the longest first. */
  CutCounts filled(WireToCut wire) {
    int[][] more = Arrays.stream(of).map(int[]::clone).toArray(int[][]::new);
    int[] all = pieces(wire.kinds());
    for (int j = 0; j < more.length; j++) {
      for (int k = 0; k < wire.ring(); k++) {
        while (all[k] < wire.wanted()[k] && wire.holdsOneMore(more[j], k, j)) {
          more[j][k]++;
          all[k]++;
        }
      }
      int rings = (int) Math.max(0, wire.ringsBeside(wire.ofBlanks(more[j]), j));
      int add =
          Math.min(wire.wanted()[wire.ring()] - all[wire.ring()], rings - more[j][wire.ring()]);
      more[j][wire.ring()] += Math.max(0, add);
      all[wire.ring()] += Math.max(0, add);
    }
    return new CutCounts(more);
  }

  /** Whether there is no piece of any kind. */
  static boolean none(int[] pieces) {
    return Arrays.stream(pieces).allMatch(count -> count == 0);
  }

  /** The same without what is cut beyond these pieces; the shortest lengths keep theirs. */
  CutCounts only(int[] pieces) {
    int[][] kept = new int[of.length][pieces.length];
    int[] left = pieces.clone();
    for (int j = of.length - 1; j >= 0; j--) {
      for (int k = 0; k < left.length; k++) {
        kept[j][k] = Math.min(left[k], of[j][k]);
        left[k] -= kept[j][k];
      }
    }
    return new CutCounts(kept);
  }
}
