package linkwright.job;

import java.util.OptionalDouble;

/**
 * What is known of a chain once it is made.
 *
 * @param closed whether its job is closed: nothing more is cut for it
 * @param weighedG what it weighed with its clasp, g; empty until it was weighed
 */
public record ChainMade(boolean closed, OptionalDouble weighedG) {
  /** What a job says of it. */
  public static ChainMade of(JobState state) {
    return new ChainMade(state.course().closed(), state.accounts().weighedIn().chainG());
  }

  /** Whether the scale has said what it weighs. */
  public boolean weighed() {
    return weighedG.isPresent();
  }

  /** What it weighs, g: as it was weighed, before that as it was reckoned. */
  public double massG(double reckonedG) {
    return weighedG.orElse(reckonedG);
  }
}
