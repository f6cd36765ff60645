package linkwright.standing.stock;

import java.util.Map;
import linkwright.job.Accounts;
import linkwright.job.JobState;
import linkwright.job.NotAccounted;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * Links and rings that were made and that the chain does not take: they lie over, in a tin or with
 * the next job's, and are not lost.
 */
public final class PiecesOver {
  private PiecesOver() {}

  /**
   * How heavy they are by the plan's own links and rings, g; those to be done again count too. Of a
   * closed job as it was closed.
   */
  public static double massG(Plan plan, JobState state) {
    Map<String, Double> kept = state.accounts().figures();
    if (!kept.isEmpty()) {
      return kept.getOrDefault(Accounts.PIECES_OVER_G, 0.0);
    }
    double grams = each(plan.massRingsG(), plan.rings()) * rings(plan, state);
    for (LinksOfSize size : plan.sizes()) {
      grams += each(size.massG(), size.links()) * over(size, plan, state);
    }
    return grams;
  }

  /** How many links lie over, of all sizes; those to be done again count too. */
  public static int links(Plan plan, JobState state) {
    return plan.sizes().stream().mapToInt(size -> over(size, plan, state)).sum();
  }

  /** The same of rings. */
  public static int rings(Plan plan, JobState state) {
    return over(state.piles().of(PieceKind.RING).alive(), plan.rings());
  }

  private static int over(LinksOfSize size, Plan plan, JobState state) {
    return over(
        plan.sizes().size() == 1
            ? state.piles().of(PieceKind.LINK).alive()
            : state.piles().of(PieceKind.LINK, size.name()).alive(),
        size.links());
  }

  /** What was not found at the weighing in, g, told apart as the drawer tells it. */
  public static NotAccounted apart(double notFoundG, Plan plan, JobState state) {
    return NotAccounted.of(notFoundG, WireAtBench.of(plan, state).massG(), massG(plan, state));
  }

  private static double each(double massG, int pieces) {
    return pieces > 0 ? massG / pieces : 0;
  }

  private static int over(int made, int wanted) {
    return Math.max(0, made - wanted);
  }
}
