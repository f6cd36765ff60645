package linkwright.reference;

/**
 * Two values that bound another, and where they come from.
 *
 * @param from the lower one
 * @param to the upper one, not below the lower
 * @param source the original source, or {@code common practice, no source}
 */
public record Range(double from, double to, String source) {
  /** Bounds the wrong way round, or no numbers, are the programmer's fault. */
  public Range {
    if (!(from <= to) || Double.isInfinite(from) || Double.isInfinite(to)) {
      throw new IllegalArgumentException("from must not be above to: " + from + " to " + to);
    }
  }
}
