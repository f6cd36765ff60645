package linkwright.fit;

/** Arguments that a caller must get right. */
final class FitArguments {
  private FitArguments() {}

  static void positive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be finite and above 0: " + value);
    }
  }

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite: " + value);
    }
  }
}
