package linkwright.yield;

import java.util.OptionalDouble;

/**
 * What is believed of a share of failures: a Beta distribution.
 *
 * <p>Use one for pieces that are lost and another for joints that are done again.
 *
 * <p>The usual share p counts as {@value #USUAL_WEIGHT} pieces seen before: Beta(10p, 10(1 − p)).
 * Each failure then adds one to the first number, each success one to the second. The weight of ten
 * is a choice of this program: after some ten pieces of the job itself, the job speaks as loudly as
 * the habit.
 *
 * @param failures the first number of the Beta distribution, 0 or more, pieces; 0 means that a
 *     failure is held to be impossible
 * @param successes the second number, 0 or more, pieces; 0 means that a success is held to be
 *     impossible
 */
public record Rate(double failures, double successes) {
  /** How many pieces the usual share weighs. */
  public static final int USUAL_WEIGHT = 10;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is negative or not finite, or both are 0
   */
  public Rate {
    if (!(failures >= 0 && failures < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("failures must be 0 or more and finite: " + failures);
    }
    if (!(successes >= 0 && successes < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("successes must be 0 or more and finite: " + successes);
    }
    if (failures == 0 && successes == 0) {
      throw new IllegalArgumentException("failures and successes are both 0: nothing is believed");
    }
  }

  /**
   * What is believed before a piece of this job is seen.
   *
   * @param share the usual share of failures, 0 to 1
   * @throws IllegalArgumentException if the share lies outside
   */
  public static Rate usual(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share must lie in 0 to 1: " + share);
    }
    return new Rate(USUAL_WEIGHT * share, USUAL_WEIGHT * (1 - share));
  }

  /**
   * What is believed after so many more pieces.
   *
   * @param succeeded pieces that came good, 0 or more
   * @param failed pieces that did not, 0 or more
   * @throws IllegalArgumentException if a count is negative
   */
  public Rate seen(int succeeded, int failed) {
    Yield.requireCount("succeeded", succeeded);
    Yield.requireCount("failed", failed);
    return new Rate(failures + failed, successes + succeeded);
  }

  /** The expected share of failures, a/(a + b), in 0 to 1. */
  public double mean() {
    return failures / (failures + successes);
  }

  /**
   * How often one joint is expected to be done again before it holds: a/(b − 1), the mean of p/(1 −
   * p) over Beta(a, b), each try failing with the same unknown chance p.
   *
   * @return 0 or more; empty if b ≤ 1: too few joints came good for a mean to exist
   */
  public OptionalDouble expectedRedosPerJoint() {
    return successes > 1 ? OptionalDouble.of(failures / (successes - 1)) : OptionalDouble.empty();
  }
}
