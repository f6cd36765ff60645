package linkwright.fit;

/**
 * The outside size wished of a finished link.
 *
 * @param lengthMm along the line of pull, more than 0
 * @param widthMm across it, more than 0
 */
public record LinkSize(double lengthMm, double widthMm) {
  /**
   * Checks the sizes.
   *
   * @throws IllegalArgumentException if one is not a finite number above 0
   */
  public LinkSize {
    FitArguments.positive("lengthMm", lengthMm);
    FitArguments.positive("widthMm", widthMm);
  }
}
