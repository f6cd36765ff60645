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
