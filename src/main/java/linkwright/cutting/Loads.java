package linkwright.cutting;

/** What is cut from each of a row of lengths, shortest first: an array of pieces for each. */
final class Loads {
  private Loads() {}

  /** How many of the lengths anything is cut from. */
  static int opened(int[][] cut) {
    int opened = 0;
    for (int[] pieces : cut) {
      for (int many : pieces) {
        if (many > 0) {
          opened++;
          break;
        }
      }
    }
    return opened;
  }

  /** How many of them carry a coil. */
  static int coils(Bench bench, int[][] cut) {
    int coils = 0;
    for (int[] pieces : cut) {
      coils += pieces[bench.ring()] > 0 ? 1 : 0;
    }
    return coils;
  }

  /** The cut without what it makes beyond the demand. */
  static int[][] trimmed(int[][] cut, int[] demand) {
    int[][] trimmed = copy(cut);
    int[] left = demand.clone();
    for (int[] pieces : trimmed) {
      for (int k = 0; k < pieces.length; k++) {
        pieces[k] = Math.min(pieces[k], left[k]);
        left[k] -= pieces[k];
      }
    }
    return trimmed;
  }

  static int[][] copy(int[][] cut) {
    int[][] copy = new int[cut.length][];
    for (int j = 0; j < cut.length; j++) {
      copy[j] = cut[j].clone();
    }
    return copy;
  }

  /** The opened lengths' pieces on the longest lengths: each load on one no shorter than before. */
  static int[][] ontoLongest(Bench bench, int[][] cut, int opened) {
    int[][] loads = new int[opened][];
    int next = opened;
    for (int j = bench.size() - 1; j >= 0; j--) {
      if (opened(new int[][] {cut[j]}) > 0) {
        loads[--next] = cut[j].clone();
      }
    }
    return loads;
  }

  /** The loads of the longest lengths among all of them. */
  static int[][] onto(int size, int[][] longest) {
    int[][] all = new int[size][longest.length == 0 ? 0 : longest[0].length];
    for (int j = 0; j < longest.length; j++) {
      all[size - longest.length + j] = longest[j].clone();
    }
    return all;
  }
}
