package linkwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is believed of a maker once all pieces are weighed, about one guess: a mixture of normal
 * distributions, one for each scatter her pieces may have and each reading that may be misread. So
 * a slip turns nothing, and where two pieces contradict each other the spread says so.
 */
final class Belief {
  /** A maker's numbers and, last, by how many degrees her eyes are turned further each time. */
  static final int SIZE = Covariance.SIZE + 1;

  /** How often a maker's turn drifts from piece to piece; this program's choice. */
  private static final double DRIFT_CHANCE = 0.1;

  /** How far it then drifts with each piece, in degrees. */
  private static final double DRIFT_DEG = 3;

  /** What stands for none. */
  private static final double STEADY_DEG = 0.1;

  /** Shares of what was believed of the scatter, evenly spread by their logarithm. */
  private static final double[] SHARES = {0.35, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6};

  /** So many of the likeliest to be misread are weighed in all combinations. */
  private static final int SUSPECTS = 5;

  /** How much of a normal distribution lies within one standard deviation. */
  private static final double ONE_SPREAD = 0.682689492;

  private static final int HALVINGS = 20;

  /** What weighs less of the whole is left out where a spread is looked for. */
  private static final double SLIGHT = 1e-4;

  private final double[] mean;
  private final double[][] covariance;
  private final double share;
  private final List<Hypothesis> parts;

  private Belief(double[] mean, double[][] covariance, double share, List<Hypothesis> parts) {
    this.mean = mean;
    this.covariance = covariance;
    this.share = share;
    this.parts = parts;
  }

  /** The maker's numbers, in standard deviations of the prior, and last the drift in degrees. */
  double[] mean() {
    return mean;
  }

  /** How uncertain they are, in the same. */
  double[][] covariance() {
    return covariance;
  }

  /** How much her pieces differ, as a share of what is usual. */
  double share() {
    return share;
  }

  /**
   * Half the width about the mean within which 68.27 of 100 lie of what is believed of a size: one
   * spread, as it is stated. It is not the square root of the variance, which a small chance of
   * being far off widens for everybody else.
   *
   * @param slope how the size changes with the numbers
   * @param noise its variance from piece to piece where that is as usual
   */
  double spread(double[] slope, double noise) {
    int count = parts.size();
    double[] weight = new double[count];
    double[] off = new double[count];
    double[] deviation = new double[count];
    double all = 0;
    double square = 0;
    for (int i = 0; i < count; i++) {
      Hypothesis part = parts.get(i);
      double[] seen = Triangle.solve(part.root, slope);
      double scatter = Math.exp(part.logShare);
      weight[i] = Math.exp(part.logWeight - parts.get(0).logWeight);
      off[i] = Triangle.dot(slope, part.mean) - Triangle.dot(slope, mean);
      deviation[i] = Math.sqrt(Triangle.dot(seen, seen) + scatter * scatter * noise);
      all += weight[i];
      square += weight[i] * (deviation[i] * deviation[i] + off[i] * off[i]);
    }
    double low = 0;
    double high = 2 * Math.sqrt(square / all);
    for (int step = 0; step < HALVINGS; step++) {
      double half = (low + high) / 2;
      double within = 0;
      for (int i = 0; i < count; i++) {
        within +=
            weight[i]
                * (NormalTail.lowerTail((half - off[i]) / deviation[i])
                    - NormalTail.lowerTail((-half - off[i]) / deviation[i]));
      }
      if (within < ONE_SPREAD * all) {
        low = half;
      } else {
        high = half;
      }
    }
    return (low + high) / 2;
  }

  /** A reading: the piece and which of its readings. */
  private record Reading(int piece, int at, double gain) {}

  /**
   * Weighs the pieces.
   *
   * @param readings what was read of each
   * @param slope slope of −log of the verdicts' chance at the guess
   * @param curvature its curvature
   * @param z the guess, in standard deviations of the prior
   * @param prior what was believed of the scatter
   * @param share the scatter as it is guessed so far
   */
  static Belief of(
      List<Readings> readings,
      double[] slope,
      double[][] curvature,
      double[] z,
      Scatter prior,
      double share) {
    double[] pull = slope.clone();
    for (int i = 0; i < SIZE; i++) {
      pull[i] = Triangle.dot(curvature[i], z) - slope[i];
      curvature[i][i] += i < Covariance.SIZE ? 1 : 0;
    }
    Weighing weighing = new Weighing(curvature, pull, prior);
    List<Reading> suspects = suspects(readings, weighing, share);
    for (int choice = 0; choice < 1 << suspects.size(); choice++) {
      weighing.weigh(all(readings, suspects, choice));
    }
    return weighing.belief();
  }

  private static List<Reading> suspects(List<Readings> readings, Weighing weighing, double share) {
    Sum plain = all(readings, List.of(), 0);
    double before = weighing.logWeight(plain, share);
    List<Reading> gains = new ArrayList<>();
    for (int piece = 0; piece < readings.size(); piece++) {
      for (int at = 0; at < readings.get(piece).count(); at++) {
        List<Reading> one = List.of(new Reading(piece, at, 0));
        double gain = weighing.logWeight(all(readings, one, 1), share) - before;
        gains.add(new Reading(piece, at, gain));
      }
    }
    gains.sort(Comparator.comparingDouble(Reading::gain).reversed());
    return gains.subList(0, Math.min(SUSPECTS, gains.size()));
  }

  /** All readings together, those misread that the choice's bits name. */
  private static Sum all(List<Readings> readings, List<Reading> suspects, int choice) {
    int[] misread = new int[readings.size()];
    for (int i = 0; i < suspects.size(); i++) {
      if ((choice >> i & 1) == 1) {
        misread[suspects.get(i).piece()] |= 1 << suspects.get(i).at();
      }
    }
    Sum sum = new Sum();
    for (int i = 0; i < misread.length; i++) {
      sum.add(readings.get(i).ways().get(misread[i]), readings.get(i).count());
    }
    return sum;
  }

  /** The normal equations of all pieces together. */
  private static final class Sum {
    private final double[][] information = new double[SIZE][SIZE];
    private final double[] pull = new double[SIZE];
    private double square;
    private double logChance;
    private int count;

    void add(Readings.Way way, int readings) {
      for (int i = 0; i < SIZE; i++) {
        pull[i] += way.pull()[i];
        for (int k = 0; k < SIZE; k++) {
          information[i][k] += way.information()[i][k];
        }
      }
      square += way.square();
      logChance += way.logChance();
      count += readings;
    }
  }

  /** Adds up normal distributions by their chance. */
  private static final class Weighing {
    private final double[][] before;
    private final double[] beforePull;
    private final Scatter prior;
    private final List<Hypothesis> parts = new ArrayList<>();

    Weighing(double[][] before, double[] beforePull, Scatter prior) {
      this.before = before;
      this.beforePull = beforePull;
      this.prior = prior;
    }

    void weigh(Sum sum) {
      for (double of : SHARES) {
        parts.add(hypothesis(sum, of * prior.share(), STEADY_DEG, Math.log(1 - DRIFT_CHANCE)));
        parts.add(hypothesis(sum, of * prior.share(), DRIFT_DEG, Math.log(DRIFT_CHANCE)));
      }
    }

    double logWeight(Sum sum, double share) {
      return hypothesis(sum, share, STEADY_DEG, 0).logWeight;
    }

    private Hypothesis hypothesis(Sum sum, double share, double driftDeg, double logChance) {
      double often = share * share;
      double[][] precision = new double[SIZE][SIZE];
      double[] pull = new double[SIZE];
      for (int i = 0; i < SIZE; i++) {
        pull[i] = beforePull[i] + sum.pull[i] / often;
        for (int k = 0; k < SIZE; k++) {
          precision[i][k] = before[i][k] + sum.information[i][k] / often;
        }
      }
      precision[SIZE - 1][SIZE - 1] += 1 / (driftDeg * driftDeg);
      double[][] root = Triangle.root(precision);
      double[] half = Triangle.solve(root, pull);
      double logWeight =
          (Triangle.dot(half, half) - sum.square / often - Triangle.logDeterminant(root)) / 2
              + sum.logChance
              - sum.count * Math.log(share)
              + prior.logChance(share)
              + logChance
              - Math.log(driftDeg);
      return new Hypothesis(logWeight, Triangle.solveTransposed(root, half), root, Math.log(share));
    }

    Belief belief() {
      double most = parts.stream().mapToDouble(part -> part.logWeight).max().orElseThrow();
      double all = 0;
      double logShare = 0;
      double[] mean = new double[SIZE];
      for (Hypothesis part : parts) {
        double weight = Math.exp(part.logWeight - most);
        all += weight;
        logShare += weight * part.logShare;
        for (int i = 0; i < SIZE; i++) {
          mean[i] += weight * part.mean[i];
        }
      }
      for (int i = 0; i < SIZE; i++) {
        mean[i] /= all;
      }
      double[][] covariance = new double[SIZE][SIZE];
      for (Hypothesis part : parts) {
        double weight = Math.exp(part.logWeight - most) / all;
        if (weight > 1e-9) {
          add(covariance, part, mean, weight);
        }
      }
      List<Hypothesis> heavy =
          parts.stream().filter(part -> part.logWeight - most > Math.log(SLIGHT)).toList();
      return new Belief(mean, covariance, Math.exp(logShare / all), heavy);
    }

    private static void add(double[][] covariance, Hypothesis part, double[] mean, double weight) {
      double[][] inverse = new double[SIZE][];
      for (int i = 0; i < SIZE; i++) {
        double[] unit = new double[SIZE];
        unit[i] = 1;
        inverse[i] = Triangle.solve(part.root, unit);
      }
      for (int i = 0; i < SIZE; i++) {
        for (int k = 0; k < SIZE; k++) {
          covariance[i][k] +=
              weight
                  * (Triangle.dot(inverse[i], inverse[k])
                      + (part.mean[i] - mean[i]) * (part.mean[k] - mean[k]));
        }
      }
    }
  }

  /** One of the normal distributions: its weight, its middle, and a root of its precision. */
  private static final class Hypothesis {
    private final double logWeight;
    private final double[] mean;
    private final double[][] root;
    private final double logShare;

    Hypothesis(double logWeight, double[] mean, double[][] root, double logShare) {
      this.logWeight = logWeight;
      this.mean = mean;
      this.root = root;
      this.logShare = logShare;
    }
  }
}
