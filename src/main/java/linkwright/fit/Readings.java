package linkwright.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * What the readings of one piece say of a maker, seen as straight lines about a guess: for each way
 * in which they may have been misread, the normal equations of the maker's numbers.
 *
 * @param ways the ways, by number: bit i is set where reading i is taken to be misread
 * @param count how many readings there are, 0 to 2
 */
record Readings(List<Way> ways, int count) {
  /** How often a reading is misread or written down wrong; this program's choice. */
  static final double MISREAD_CHANCE = 0.05;

  /** How far a misread length is off, as a share of it, at least {@link #MISREAD_LEAST_MM}. */
  private static final double MISREAD_SHARE = 0.1;

  private static final double MISREAD_LEAST_MM = 1;

  /** One way to take the readings, as normal equations. */
  static final class Way {
    private final double[][] information;
    private final double[] pull;
    private final double square;
    private final double logChance;

    Way(double[][] information, double[] pull, double square, double logChance) {
      this.information = information;
      this.pull = pull;
      this.square = square;
      this.logChance = logChance;
    }

    /** What they tell, Jᵀ·N⁻¹·J. */
    double[][] information() {
      return information;
    }

    /** What they draw to, Jᵀ·N⁻¹·r. */
    double[] pull() {
      return pull;
    }

    /** How far off they are, rᵀ·N⁻¹·r. */
    double square() {
      return square;
    }

    /** log of the chance of reading so, less half of log |N|. */
    double logChance() {
      return logChance;
    }
  }

  /**
   * @param ago how many pieces before the next one
   * @param z where the piece was looked at, in standard deviations of the prior
   * @param noise what differs from piece to piece: {length², both, width²}
   */
  static Readings of(
      List<Evidence.Clue> clues, Sensitivity piece, int ago, double[] z, double[] noise) {
    List<double[]> slopes = clues.stream().map(clue -> clue.slopeMm(piece, ago)).toList();
    int n = clues.size();
    List<Way> ways = new ArrayList<>();
    for (int misread = 0; misread < 1 << n; misread++) {
      double[][] m = new double[n][n];
      double[] off = new double[n];
      double chance = 0;
      for (int i = 0; i < n; i++) {
        Evidence.Clue clue = clues.get(i);
        for (int k = 0; k < n; k++) {
          m[i][k] =
              clue.ofLength() == clues.get(k).ofLength()
                  ? noise[clue.ofLength() ? 0 : 2]
                  : noise[1];
        }
        m[i][i] += PieceScatter.CALIPER_MM * PieceScatter.CALIPER_MM;
        boolean wrong = (misread >> i & 1) == 1;
        if (wrong) {
          double far = Math.max(MISREAD_LEAST_MM, MISREAD_SHARE * clue.mm());
          m[i][i] += far * far;
        }
        chance += Math.log(wrong ? MISREAD_CHANCE : 1 - MISREAD_CHANCE);
        off[i] = clue.mm() - clue.sizeMm(piece.size()) + Triangle.dot(slopes.get(i), z);
      }
      ways.add(way(slopes, Triangle.root(m), off, chance));
    }
    return new Readings(ways, n);
  }

  private static Way way(List<double[]> slopes, double[][] root, double[] off, double chance) {
    double[] scaled = Triangle.solve(root, off);
    double[][] columns = new double[Belief.SIZE][off.length];
    for (int j = 0; j < columns.length; j++) {
      for (int i = 0; i < off.length; i++) {
        columns[j][i] = slopes.get(i)[j];
      }
      columns[j] = Triangle.solve(root, columns[j]);
    }
    double[][] information = new double[columns.length][columns.length];
    double[] pull = new double[columns.length];
    for (int j = 0; j < columns.length; j++) {
      pull[j] = Triangle.dot(columns[j], scaled);
      for (int k = 0; k < columns.length; k++) {
        information[j][k] = Triangle.dot(columns[j], columns[k]);
      }
    }
    return new Way(
        information,
        pull,
        Triangle.dot(scaled, scaled),
        chance - Triangle.logDeterminant(root) / 2);
  }
}
