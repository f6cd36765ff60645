package linkwright.fit;

/**
 * How much a maker's pieces differ from each other, learned from how well they fit.
 *
 * @param share as a share of what is usual ({@link PieceScatter}), above 0
 * @param weight of how many readings that is worth, above 0; old ones are slowly forgotten
 */
public record Scatter(double share, double weight) {
  /** Of a maker of whom nothing is known: as usual, worth a few readings. */
  public static final Scatter USUAL = new Scatter(1, 6);

  /** Beyond this many readings the oldest are forgotten. */
  private static final double MOST_WEIGHT = 16;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not a finite number above 0
   */
  public Scatter {
    FitArguments.positive("share", share);
    FitArguments.positive("weight", weight);
  }

  /** log of the chance of a share on a logarithmic scale, but for a constant. */
  double logChance(double other) {
    double ratio = share / other;
    return weight * (Math.log(ratio) - ratio * ratio / 2);
  }

  /** After so many more readings. */
  Scatter seen(double nowShare, int readings) {
    return new Scatter(nowShare, Math.min(MOST_WEIGHT, weight + readings));
  }
}
