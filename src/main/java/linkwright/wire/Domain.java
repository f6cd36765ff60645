package linkwright.wire;

/** Checks of arguments, and of results that must not leave the numbers. */
final class Domain {
  private Domain() {}

  static double above0(String name, double value) {
    if (!(value > 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(name + " must be above 0 and finite, not " + value);
    }
    return value;
  }

  static double notBelow0(String name, double value) {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(name + " must be finite and not below 0, not " + value);
    }
    return value;
  }

  /** The result, unless the sizes were so far apart that it is no number any more. */
  static double result(String name, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " overflows with these sizes");
    }
    return value;
  }
}
