package linkwright.fit;

/** The normal distribution's lower tail, as far as a verdict needs it. */
final class NormalTail {
  private NormalTail() {}

  /**
   * log Φ(u), for every finite u.
   *
   * <p>By Φ's continued fraction beyond ±3 (Abramowitz and Stegun, Handbook of Mathematical
   * Functions, 1964, 26.2.14) and its power series between (26.2.10). Accuracy: 10⁻⁹ or better, by
   * the test against an outside library.
   */
  static double logLowerTail(double u) {
    if (u < -3) {
      return logDensity(u) - Math.log(fraction(-u));
    }
    if (u > 3) {
      return Math.log1p(-Math.exp(logDensity(u)) / fraction(u));
    }
    double x = Math.abs(u);
    double term = x;
    double sum = x;
    for (int n = 1; n < 200; n++) {
      term *= -x * x / (2 * n);
      double next = term / (2 * n + 1);
      sum += next;
      if (Math.abs(next) < 1e-17 * Math.abs(sum)) {
        break;
      }
    }
    return Math.log(0.5 + Math.signum(u) * sum / Math.sqrt(2 * Math.PI));
  }

  /** Φ(u). */
  static double lowerTail(double u) {
    return Math.exp(logLowerTail(u));
  }

  /** φ(u)/Φ(u): how strongly a verdict pulls; 0 far above, about −u far below. */
  static double hazard(double u) {
    return u < -3 ? fraction(-u) : Math.exp(logDensity(u) - logLowerTail(u));
  }

  private static double logDensity(double u) {
    return -0.5 * u * u - 0.5 * Math.log(2 * Math.PI);
  }

  /** x + 1/(x + 2/(x + 3/(x + …))), for x ≥ 3. */
  private static double fraction(double x) {
    double tail = x;
    for (int n = 120; n >= 1; n--) {
      tail = x + n / tail;
    }
    return tail;
  }
}
