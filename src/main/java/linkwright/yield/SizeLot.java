package linkwright.yield;

/**
 * Pieces of one kind or size, which no other piece can stand in for.
 *
 * @param more good pieces still wanted, 0 or more
 * @param blanks blanks there are for them, 0 or more
 */
public record SizeLot(int more, int blanks) {
  private static final double LEAST = 1e-18;

  /** Checks the counts. */
  public SizeLot {
    Yield.requireCount("more", more);
    Yield.requireCount("blanks", blanks);
  }

  /**
   * The chance that exactly 0, 1, 2 … further blanks are needed beyond those there are, if a share
   * p is lost: of the trials before the m-th good piece, P(T = t) = C(t − 1, m − 1)(1 − p)^m p^(t −
   * m).
   */
  double[] further(double lost, int most) {
    double[] chances = new double[most + 1];
    double term = Math.pow(1 - lost, more);
    if (more == 0) {
      chances[0] = 1;
      return chances;
    }
    for (int trials = more; trials <= blanks + most; trials++) {
      if (term < LEAST && trials * (1 - lost) > more) {
        break; // past its peak, and too little to be seen: no later term is larger
      }
      chances[Math.max(0, trials - blanks)] += term;
      term *= lost * trials / (trials - more + 1);
    }
    return chances;
  }
}
