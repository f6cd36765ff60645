package linkwright.fit;

/**
 * How uncertain a maker's three numbers are, and how they hang together: the six different entries
 * of a symmetric matrix, in the order growth (no unit), lost wire (mm), extra turn (degrees).
 *
 * @param growthGrowth variance of the growth
 * @param growthLost covariance of growth and lost wire
 * @param growthTurn covariance of growth and extra turn
 * @param lostLost variance of the lost wire
 * @param lostTurn covariance of lost wire and extra turn
 * @param turnTurn variance of the extra turn
 */
public record Covariance(
    double growthGrowth,
    double growthLost,
    double growthTurn,
    double lostLost,
    double lostTurn,
    double turnTurn) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not finite or a variance is negative
   */
  public Covariance {
    for (double value :
        new double[] {growthGrowth, growthLost, growthTurn, lostLost, lostTurn, turnTurn}) {
      Checks.finite("covariance", value);
    }
    if (growthGrowth < 0 || lostLost < 0 || turnTurn < 0) {
      throw new IllegalArgumentException(
          "variances must be 0 or more: " + growthGrowth + ", " + lostLost + ", " + turnTurn);
    }
  }

  /** Three numbers that do not hang together, from their standard deviations. */
  public static Covariance ofSpreads(double growth, double lostMm, double extraTurnDeg) {
    return new Covariance(growth * growth, 0, 0, lostMm * lostMm, 0, extraTurnDeg * extraTurnDeg);
  }

  /** The matrix A·Aᵀ of a root A. */
  static Covariance ofRoot(double[][] a) {
    return new Covariance(
        dot(a[0], a[0]),
        dot(a[0], a[1]),
        dot(a[0], a[2]),
        dot(a[1], a[1]),
        dot(a[1], a[2]),
        dot(a[2], a[2]));
  }

  /** A lower triangular A with A·Aᵀ equal to this; rows of zeros where nothing is uncertain. */
  double[][] root() {
    return Triangle.root(
        new double[][] {
          {growthGrowth, growthLost, growthTurn},
          {growthLost, lostLost, lostTurn},
          {growthTurn, lostTurn, turnTurn}
        });
  }

  private static double dot(double[] one, double[] other) {
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
  }
}
