package linkwright.cutting;

/**
 * The one budget of a cutting plan. It is counted in steps and cells, for the core knows no clock:
 * so the same order has the same plan wherever it is asked for.
 */
final class CuttingBudget {
  /** About a tenth of a second. */
  private static final long STEPS = 100_000_000;

  /** 40 megabytes. */
  private static final long CELLS = 10_000_000;

  private long steps = STEPS;
  private long cells = CELLS;

  /** How many ways can still be tried on a layer of so many cells. */
  int ways(long layer) {
    return (int) (steps / layer);
  }

  /** Takes a layer and so many ways to fill it; false if that is more than is left. */
  boolean spend(long layer, int ways) {
    cells -= layer;
    steps -= layer * ways;
    return cells >= 0 && steps >= 0;
  }
}
