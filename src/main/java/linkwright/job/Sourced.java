package linkwright.job;

/**
 * A value that was reckoned with, and where it came from.
 *
 * @param value as it would be typed, with its unit
 * @param from where it came from
 */
public record Sourced(String value, Source from) {
  /** Where a value comes from. */
  public enum Source {
    /** It was typed for this job. */
    TYPED,
    /** It stands in the description of her bench. */
    BENCH,
    /** Her earlier pieces taught it. */
    HANDS,
    /** It is what is usual. */
    USUAL,
    /** What stands in the description of her bench, and what her earlier pieces taught of it. */
    BENCH_AND_HANDS
  }
}
