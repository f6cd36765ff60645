package linkwright.fit;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How uncertain a maker's numbers are, and how they hang together: a symmetric matrix in the order
 * stress (as a share of the modulus), winding clearance (as a share of the wire), lost wire (mm),
 * extra turn (degrees).
 *
 * @param entries row after row, each up to the diagonal
 */
public record Covariance(List<Double> entries) {
  /** How many numbers a maker has. */
  static final int SIZE = 4;

  /**
   * Checks the entries.
   *
   * @throws IllegalArgumentException if there are too few or too many, one is not finite, or a
   *     variance is negative
   */
  public Covariance {
    entries = List.copyOf(entries);
    if (entries.size() != SIZE * (SIZE + 1) / 2) {
      throw new IllegalArgumentException("entries must be 10: " + entries);
    }
    entries.forEach(value -> FitArguments.finite("covariance", value));
    for (int i = 0; i < SIZE; i++) {
      if (entries.get(place(i, i)) < 0) {
        throw new IllegalArgumentException("variances must be 0 or more: " + entries);
      }
    }
  }

  /** Numbers that do not hang together, from their standard deviations. */
  public static Covariance ofSpreads(
      double stressShare, double clearanceShare, double lostMm, double extraTurnDeg) {
    double[] spreads = {stressShare, clearanceShare, lostMm, extraTurnDeg};
    double[][] root = new double[SIZE][SIZE];
    for (int i = 0; i < SIZE; i++) {
      root[i][i] = spreads[i];
    }
    return ofRoot(root);
  }

  /** The matrix A·Aᵀ of a root A. */
  static Covariance ofRoot(double[][] a) {
    return new Covariance(
        IntStream.range(0, SIZE)
            .boxed()
            .flatMap(i -> IntStream.rangeClosed(0, i).mapToObj(k -> Triangle.dot(a[i], a[k])))
            .toList());
  }

  /** The entry of a row and a column. */
  public double at(int row, int column) {
    return entries.get(place(Math.max(row, column), Math.min(row, column)));
  }

  /** A lower triangular A with A·Aᵀ equal to this; rows of zeros where nothing is uncertain. */
  double[][] root() {
    double[][] m = new double[SIZE][SIZE];
    for (int i = 0; i < SIZE; i++) {
      for (int k = 0; k < SIZE; k++) {
        m[i][k] = at(i, k);
      }
    }
    return Triangle.root(m);
  }

  private static int place(int row, int column) {
    return row * (row + 1) / 2 + column;
  }
}
