package linkwright.job;

/**
 * What a weighing in did not find, g: told apart into what is known to lie somewhere and what is
 * lost. Our own reckoning: no more can lie somewhere than was not found.
 *
 * @param atBenchG wire still at the bench
 * @param overG pieces that were made and that the chain does not take
 * @param lostG the rest; negative where more was found than went in
 */
public record NotAccounted(double atBenchG, double overG, double lostG) {
  /** What was not found, with the wire and the pieces that lie somewhere by the books, all in g. */
  public static NotAccounted of(double notFoundG, double atBenchG, double overG) {
    double here = Math.min(Math.max(0, notFoundG), atBenchG);
    double over = Math.min(Math.max(0, notFoundG - here), overG);
    return new NotAccounted(here, over, notFoundG - here - over);
  }
}
