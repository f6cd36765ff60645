package linkwright.fit;

/** Small triangular matrices: the square roots of symmetric ones (Cholesky). */
final class Triangle {
  private Triangle() {}

  /**
   * The lower triangular L with L·Lᵀ = m. A pivot that rounding has brought to 0 or below gives a
   * column of zeros, so that a matrix with certain entries has a root too.
   */
  static double[][] root(double[][] m) {
    int n = m.length;
    double[][] l = new double[n][n];
    for (int j = 0; j < n; j++) {
      double pivot = m[j][j];
      for (int k = 0; k < j; k++) {
        pivot -= l[j][k] * l[j][k];
      }
      if (pivot <= 1e-14 * m[j][j]) {
        continue;
      }
      l[j][j] = Math.sqrt(pivot);
      for (int i = j + 1; i < n; i++) {
        double sum = m[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = sum / l[j][j];
      }
    }
    return l;
  }

  /** x with L·x = b; L has no zero on its diagonal. */
  static double[] solve(double[][] l, double[] b) {
    double[] x = b.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= l[i][k] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  /** x with Lᵀ·x = b; L has no zero on its diagonal. */
  static double[] solveTransposed(double[][] l, double[] b) {
    double[] x = b.clone();
    for (int i = x.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < x.length; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  /** The sum of products. */
  static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  /** The logarithm of the determinant of L·Lᵀ. */
  static double logDeterminant(double[][] l) {
    double sum = 0;
    for (int i = 0; i < l.length; i++) {
      sum += 2 * Math.log(l[i][i]);
    }
    return sum;
  }
}
