package linkwright.link;

/** Ellipses by their half axes. */
final class Ellipse {
  private Ellipse() {}

  /**
   * P = 4aE(e), summed by the arithmetic-geometric mean: P = 2π(a² − Σ 2ⁿ⁻¹cₙ²)/M(a, b) with c₀² =
   * a² − b².
   *
   * <p>Any order of the half axes, each above 0, in one unit; the perimeter in that unit. Good to
   * some 14 digits. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 17.6.
   *
   * @throws IllegalArgumentException if a half axis is not a finite number above 0
   */
  static double perimeter(double halfOne, double halfOther) {
    if (!(halfOne > 0 && halfOther > 0 && Double.isFinite(halfOne + halfOther))) {
      throw new IllegalArgumentException(
          "half axes must be more than 0: " + halfOne + ", " + halfOther);
    }
    double largest = Math.max(halfOne, halfOther);
    double a = 1;
    double b = Math.min(halfOne, halfOther) / largest;
    double sum = 1 - (1 - b) * (1 + b) / 2;
    double weight = 1;
    while (a - b > 1e-15) {
      double c = (a - b) / 2;
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
      sum -= weight * c * c;
      weight *= 2;
    }
    return 2 * Math.PI * largest * sum / a;
  }

  /** The longer half axis of an ellipse of this perimeter whose shorter half axis is given. */
  static double longerHalf(double perimeter, double shorterHalf) {
    double low = shorterHalf;
    double high = perimeter / 4;
    for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
      double middle = (low + high) / 2;
      if (perimeter(middle, shorterHalf) < perimeter) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
