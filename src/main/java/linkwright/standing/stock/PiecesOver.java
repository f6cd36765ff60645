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
    boolean alone = plan.sizes().size() == 1;
    double grams =
        each(plan.massRingsG(), plan.rings())
            * over(state.piles().of(PieceKind.RING).alive(), plan.rings());
    for (LinksOfSize size : plan.sizes()) {
      int made =
          alone
              ? state.piles().of(PieceKind.LINK).alive()
              : state.piles().of(PieceKind.LINK, size.name()).alive();
      grams += each(size.massG(), size.links()) * over(made, size.links());
    }
    return grams;
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
