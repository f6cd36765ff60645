package linkwright.reference;

/**
 * A value and where it comes from.
 *
 * @param value the value, finite; its unit is named where it is used
 * @param source the original source, or {@code common practice, no source}
 */
public record PublishedFigure(double value, String source) {
  /** A figure that is no number is the programmer's fault. */
  public PublishedFigure {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("value must be finite, not " + value);
    }
  }
}
