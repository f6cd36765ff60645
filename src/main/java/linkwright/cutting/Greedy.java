package linkwright.cutting;

import java.util.Arrays;

/**
 * A way to cut that is found at once: the longest lengths first, coils or blanks first, and of the
 * blanks the longest that still go in. It gives a plan to start from, however little time there is.
 */
final class Greedy {
  private Greedy() {}

  /** Pieces cut from each length, or an empty array when this way does not reach. */
  static int[][] cut(Bench bench, int[] demand) {
    int[][] way = cut(bench, demand, true);
    return way.length > 0 || demand[bench.ring()] == 0 ? way : cut(bench, demand, false);
  }

  /** How many lengths like the first this way takes for blanks that each fit into one. */
  static int lengthsOf(Bench bench, int[] demand) {
    int[] wanted = demand.clone();
    int lengths = 0;
    while (Arrays.stream(wanted).anyMatch(left -> left > 0)) {
      blanks(bench, 0, new int[bench.kinds()], wanted);
      lengths++;
    }
    return lengths;
  }

  private static int[][] cut(Bench bench, int[] demand, boolean coilsFirst) {
    int[][] cut = new int[bench.size()][bench.kinds()];
    int[] wanted = demand.clone();
    for (int j = bench.size() - 1; j >= 0; j--) {
      if (coilsFirst) {
        coil(bench, j, cut[j], wanted);
        blanks(bench, j, cut[j], wanted);
      } else {
        blanks(bench, j, cut[j], wanted);
        coil(bench, j, cut[j], wanted);
      }
    }
    for (int left : wanted) {
      if (left > 0) {
        return new int[0][];
      }
    }
    return cut;
  }

  private static void coil(Bench bench, int length, int[] cut, int[] wanted) {
    int ring = bench.ring();
    if (wanted[ring] == 0) {
      return;
    }
    long room = room(bench, length, cut) - bench.tail();
    long turns = room < 0 ? 0 : Math.min(bench.mostTurns(length), room / bench.turn());
    cut[ring] = (int) Math.min(wanted[ring], turns);
    wanted[ring] -= cut[ring];
  }

  private static void blanks(Bench bench, int length, int[] cut, int[] wanted) {
    for (int k = 0; k < bench.piece().length; k++) {
      long fit = Math.max(0, room(bench, length, cut)) / bench.piece()[k];
      cut[k] = (int) Math.min(wanted[k], fit);
      wanted[k] -= cut[k];
    }
  }

  private static long room(Bench bench, int length, int[] cut) {
    long room = bench.room(length);
    for (int k = 0; k < bench.piece().length; k++) {
      room -= bench.piece()[k] * cut[k];
    }
    int rings = cut[bench.ring()];
    return rings > 0 ? room - bench.tail() - rings * bench.turn() : room;
  }
}
