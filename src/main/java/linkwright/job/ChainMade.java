package linkwright.job;

import java.util.OptionalDouble;
import linkwright.quantity.UnitStyle;

/**
 * What is known of a chain once it is made.
 *
 * @param closed whether its job is closed: nothing more is cut for it
 * @param weighedG what it weighed with its clasp, g; empty until it was weighed
 * @param measuredMm how long it was, measured, mm; empty until it was measured
 */
public record ChainMade(boolean closed, OptionalDouble weighedG, OptionalDouble measuredMm) {
  /** What a job says of it. */
  public static ChainMade of(JobState state) {
    Fact.WeighedIn in = state.accounts().weighedIn();
    return new ChainMade(state.course().closed(), in.chainG(), in.lengthMm());
  }

  /** Whether the scale has said what it weighs. */
  public boolean weighed() {
    return weighedG.isPresent();
  }

  /** Whether the rule has said how long it is. */
  public boolean measured() {
    return measuredMm.isPresent();
  }

  /** How long it is, in words: as it was measured, before that as it was reckoned. */
  public String lengthSaid(double reckonedMm, double plusMinusMm, UnitStyle units) {
    return measured()
        ? units.length(measuredMm.getAsDouble())
        : units.about(reckonedMm, plusMinusMm);
  }

  /** What it weighs, g: as it was weighed, before that as it was reckoned. */
  public double massG(double reckonedG) {
    return weighedG.orElse(reckonedG);
  }
}
