package linkwright.yield;

/**
 * Walks up the losses before the m-th good piece, adding up their chance term by term.
 *
 * <p>P(0) = Π (b + i)/(a + b + i), i = 0 … m − 1; P(k + 1)/P(k) = (m + k)/(k + 1) · (a + k)/(a + b
 * + m + k). A product of ratios needs no gamma function and keeps its digits where the difference
 * of two large logarithms of one would lose them.
 */
final class Losses {
  private final double wanted;
  private final Rate loss;
  private int count;
  private double logTerm;
  private double logSum;

  /** Starts at no loss; {@code loss.successes()} must not be 0. */
  Losses(int wanted, Rate loss) {
    this.wanted = wanted;
    this.loss = loss;
    for (int i = 0; i < wanted; i++) {
      logTerm += logShare(loss.successes() + i, loss.failures());
    }
    logSum = logTerm;
  }

  /** The logarithm of s/(s + f), exact to the last digits both near 0 and near 1. */
  private static double logShare(double s, double f) {
    return f < s ? -Math.log1p(f / s) : Math.log(s / (s + f));
  }

  /** Allows one loss more. */
  void oneMore() {
    double a = loss.failures();
    double weight = a + loss.successes();
    logTerm +=
        Math.log((wanted + count) / (count + 1.0) * ((a + count) / (weight + wanted + count)));
    double larger = Math.max(logSum, logTerm);
    double smaller = Math.min(logSum, logTerm);
    // No failure is possible: every term after the first is the logarithm of 0.
    if (smaller > Double.NEGATIVE_INFINITY) {
      logSum = larger + Math.log1p(Math.exp(smaller - larger));
    }
    count++;
  }

  /** The losses allowed so far. */
  int count() {
    return count;
  }

  /** The chance that there are no more losses than {@link #count}, 0 to 1. */
  double chanceOfNoMore() {
    return Math.min(1, Math.exp(logSum));
  }
}
