package linkwright.standing;

import linkwright.plan.FigureSource;

/**
 * Hours of a job, at the bench and to go together.
 *
 * @param spentSeconds seconds at the bench so far
 * @param toGo what is still to go, with its spread
 */
public record JobHours(double spentSeconds, Forecast toGo) {
  private static final double SECONDS_PER_HOUR = 3600;

  /** Where they come from: her own pace where any of it was timed, else what is usual. */
  public FigureSource from() {
    return toGo.learned() ? FigureSource.LEARNED : FigureSource.USUAL;
  }

  /** Hours in all. */
  public double hours() {
    return (spentSeconds + toGo.seconds()) / SECONDS_PER_HOUR;
  }

  /** Hours still to go. */
  public double hoursToGo() {
    return toGo.seconds() / SECONDS_PER_HOUR;
  }

  /** The doubt of both, one standard deviation, h: what was spent is known. */
  public double plusMinus() {
    return toGo.spread() / SECONDS_PER_HOUR;
  }
}
