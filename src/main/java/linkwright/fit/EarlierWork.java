package linkwright.fit;

import java.util.List;
import linkwright.link.Bending;

/**
 * What earlier jobs taught of a maker, as the prior of the next one.
 *
 * <p>Winding, lost wire and turn are her own in whatever metal; the stress is the metal's, and each
 * batch of it differs from the next by {@value #BATCH_SPREAD} of it. Kept are five numbers and how
 * they hang together: the metal's stress, her three, and the stress of the batch at hand. Each
 * job's pieces are fitted by {@link Fit} from what was believed before it, and what they taught is
 * carried on to the five as a Kalman step does. Before each job a little is forgotten: hands
 * change.
 */
public final class EarlierWork {
  /** How far one batch's stress differs from another's of the same metal, as a share. */
  public static final double BATCH_SPREAD = 0.06;

  /** What is forgotten with each job, as a share of what one maker differs from another. */
  private static final double FORGOTTEN = 0.1;

  /** What is kept of the weight of her scatter from job to job. */
  private static final double SCATTER_KEPT = 0.7;

  private static final int METAL = 0;
  private static final int BATCH = 4;
  private static final int KNOWN = 5;

  private final double stressShare;
  private final double[] mean;
  private final double[][] covariance = new double[KNOWN][KNOWN];
  private Scatter scatter = Scatter.USUAL;

  private EarlierWork(double stressShare) {
    this.stressShare = stressShare;
    this.mean = new double[] {stressShare, 0, 0, 0, stressShare};
    double metal = sq(Maker.USUAL_STRESS_SPREAD * stressShare);
    covariance[METAL][METAL] = metal;
    covariance[METAL][BATCH] = metal;
    covariance[BATCH][METAL] = metal;
    covariance[BATCH][BATCH] = metal + sq(BATCH_SPREAD * stressShare);
    covariance[1][1] = sq(Maker.USUAL_CLEARANCE_SPREAD);
    covariance[2][2] = sq(Maker.USUAL_LOST_SPREAD_MM);
    covariance[3][3] = sq(Maker.USUAL_TURN_SPREAD_DEG);
  }

  /**
   * What is believed of her before the next job's first piece.
   *
   * @param stressShare the stress that the next job's metal data give, over the modulus, above 0
   * @param jobs earlier jobs, the oldest first; none: {@link Maker#unknown}
   */
  public static Maker prior(double stressShare, List<EarlierJob> jobs) {
    if (jobs.isEmpty()) {
      return Maker.unknown(stressShare);
    }
    EarlierWork work = new EarlierWork(stressShare);
    jobs.forEach(work::learn);
    return work.next();
  }

  private void learn(EarlierJob job) {
    forget();
    double[][] look = look(job);
    double[] expected = new double[Covariance.SIZE];
    double[][] cross = new double[KNOWN][Covariance.SIZE];
    for (int i = 0; i < Covariance.SIZE; i++) {
      expected[i] = Triangle.dot(look[i], mean);
      for (int k = 0; k < KNOWN; k++) {
        cross[k][i] = Triangle.dot(covariance[k], look[i]);
      }
    }
    double[][] before = new double[Covariance.SIZE][Covariance.SIZE];
    for (int i = 0; i < Covariance.SIZE; i++) {
      for (int k = 0; k < Covariance.SIZE; k++) {
        before[i][k] = column(cross, k, look[i]);
      }
    }
    if (!job.sameMetal()) {
      expected[0] = job.stressShare();
      before[0][0] = sq(Maker.USUAL_STRESS_SPREAD * job.stressShare());
    } else if (!job.sameBatch()) {
      before[0][0] += sq(BATCH_SPREAD * stressShare);
    }
    Maker prior = new Maker(bending(expected), of(before), scatter);
    Maker taught = Fit.learn(job.pattern(), job.wireMm(), prior, job.pieces(), job.wish());
    carry(cross, before, expected, taught);
    scatter = new Scatter(taught.scatter().share(), SCATTER_KEPT * taught.scatter().weight());
  }

  /** Which of the five a job's four numbers are. */
  private static double[][] look(EarlierJob job) {
    double[][] look = new double[Covariance.SIZE][KNOWN];
    if (job.sameMetal()) {
      look[0][job.sameBatch() ? BATCH : METAL] = 1;
    }
    for (int i = 1; i < Covariance.SIZE; i++) {
      look[i][i] = 1;
    }
    return look;
  }

  private static double column(double[][] cross, int k, double[] look) {
    double sum = 0;
    for (int j = 0; j < KNOWN; j++) {
      sum += look[j] * cross[j][k];
    }
    return sum;
  }

  /** What a job taught of its own four numbers, carried on to the five. */
  private void carry(double[][] cross, double[][] before, double[] expected, Maker taught) {
    double[][] root = Triangle.root(before);
    double[][] gain = new double[KNOWN][];
    for (int k = 0; k < KNOWN; k++) {
      gain[k] = Triangle.solveTransposed(root, Triangle.solve(root, cross[k]));
    }
    Bending now = taught.bending();
    double[] moved = {
      now.stressShare() - expected[0],
      now.clearanceShare() - expected[1],
      now.lostMm() - expected[2],
      now.extraTurnDeg() - expected[3]
    };
    for (int k = 0; k < KNOWN; k++) {
      mean[k] += Triangle.dot(gain[k], moved);
      for (int j = 0; j < KNOWN; j++) {
        for (int a = 0; a < Covariance.SIZE; a++) {
          for (int b = 0; b < Covariance.SIZE; b++) {
            covariance[k][j] +=
                gain[k][a] * (taught.covariance().at(a, b) - before[a][b]) * gain[j][b];
          }
        }
      }
    }
  }

  private void forget() {
    double metal = sq(FORGOTTEN * BATCH_SPREAD * stressShare);
    covariance[METAL][METAL] += metal;
    covariance[1][1] += sq(FORGOTTEN * Maker.USUAL_CLEARANCE_SPREAD);
    covariance[2][2] += sq(FORGOTTEN * Maker.USUAL_LOST_SPREAD_MM);
    covariance[3][3] += sq(FORGOTTEN * Maker.USUAL_TURN_SPREAD_DEG);
  }

  private Maker next() {
    int[] of = {BATCH, 1, 2, 3};
    double[][] own = new double[Covariance.SIZE][Covariance.SIZE];
    double[] middle = new double[Covariance.SIZE];
    for (int i = 0; i < Covariance.SIZE; i++) {
      middle[i] = mean[of[i]];
      for (int k = 0; k < Covariance.SIZE; k++) {
        own[i][k] = covariance[of[i]][of[k]];
      }
    }
    return new Maker(bending(middle), of(own), scatter);
  }

  private static Bending bending(double[] four) {
    return new Bending(Math.max(0, four[0]), four[1], four[2], four[3]);
  }

  private static Covariance of(double[][] matrix) {
    return Covariance.ofRoot(Triangle.root(matrix));
  }

  private static double sq(double x) {
    return x * x;
  }
}
