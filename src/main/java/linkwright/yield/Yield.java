package linkwright.yield;

/**
 * Blanks to cut when some pieces are lost on the way.
 *
 * <p>With a loss believed to be Beta(a, b), the losses before the m-th good piece follow the beta
 * negative binomial distribution
 *
 * <pre>P(k) = C(m + k − 1, k) · B(a + k, b + m) / B(a, b)</pre>
 *
 * and n blanks are enough when k ≤ n − m; the same as a beta-binomial count of good pieces among n
 * reaching m. The terms are added up by their ratio, in logarithms, so that neither a large m nor a
 * hopeless loss underflows, and a further blank can only add to the chance. Accuracy: better than
 * 10⁻⁹ up to {@value #MOST_BLANKS} blanks.
 *
 * <p>Source: N. L. Johnson, A. W. Kemp, S. Kotz, Univariate Discrete Distributions, 3rd ed., 2005,
 * section 6.2.2 (from memory); checked in the tests by quadrature and by published values.
 */
public final class Yield {
  /** The most blanks this is asked about; more are not made by hand. */
  public static final int MOST_BLANKS = 1_000_000;

  private Yield() {}

  /**
   * The fewest further blanks so that enough come good with at least the wished chance.
   *
   * @param more good pieces still wanted, 0 or more
   * @param good pieces that came good so far in this job, 0 or more
   * @param lost pieces that were lost so far in this job, 0 or more; a joint that was done again
   *     and holds is not one of them
   * @param usualLoss the share of pieces usually lost, 0 to 1
   * @param confidence the wished chance, above 0, at most 1
   * @return the blanks, 0 if no more pieces are wanted; or why no number is enough
   * @throws IllegalArgumentException if an argument lies outside its domain
   */
  public static BlanksToCut cut(int more, int good, int lost, double usualLoss, double confidence) {
    return cut(more, Rate.usual(usualLoss).seen(good, lost), confidence);
  }

  /**
   * The fewest further blanks so that enough come good with at least the wished chance.
   *
   * @param more good pieces still wanted, 0 or more
   * @param loss what is believed of the share of pieces lost
   * @param confidence the wished chance, above 0, at most 1
   * @return the blanks, 0 if no more pieces are wanted; or why no number is enough
   * @throws IllegalArgumentException if an argument lies outside its domain
   */
  public static BlanksToCut cut(int more, Rate loss, double confidence) {
    requireCount("more", more);
    if (!(confidence > 0 && confidence <= 1)) {
      throw new IllegalArgumentException("confidence must lie above 0, up to 1: " + confidence);
    }
    if (more == 0) {
      return new BlanksToCut.Blanks(0, 1);
    }
    if (loss.successes() == 0) {
      return new BlanksToCut.OutOfReach(
          "By this loss every piece is scrapped, so no number of blanks is enough: make one piece"
              + " that comes good, or give a usual loss below 100 %.");
    }
    if (confidence == 1 && loss.failures() > 0) {
      return new BlanksToCut.OutOfReach(
          "No number of blanks makes it certain: ask for a chance below 100 %, 99 % for instance.");
    }
    if (more <= MOST_BLANKS) {
      Losses losses = new Losses(more, loss);
      while (losses.chanceOfNoMore() < confidence && more + losses.count() < MOST_BLANKS) {
        losses.oneMore();
      }
      if (losses.chanceOfNoMore() >= confidence) {
        return new BlanksToCut.Blanks(more + losses.count(), losses.chanceOfNoMore());
      }
    }
    return new BlanksToCut.OutOfReach(
        "Not even 1 000 000 blanks give that chance: ask for a lower one, for fewer pieces, or find"
            + " out first why so many are scrapped.");
  }

  static void requireCount(String name, int count) {
    if (count < 0) {
      throw new IllegalArgumentException(name + " must be 0 or more: " + count);
    }
  }
}
