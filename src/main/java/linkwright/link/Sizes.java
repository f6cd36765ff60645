package linkwright.link;

import linkwright.quantity.Decimals;

/** Sizes in the sentences of this package, wild ones too. */
final class Sizes {
  private Sizes() {}

  /** Millimetres to 0.01 mm, trailing zeros dropped. */
  static String mm(double mm) {
    return plain(mm) + " mm";
  }

  /** A size as it was given, fractions of an inch too: 5/16 in is 7.9375 mm. */
  static String given(double mm) {
    return (Math.abs(mm) >= 0.005 && Math.abs(mm) < 1e9 ? Decimals.upTo(mm, 4) : plain(mm)) + " mm";
  }

  /** A least length, rounded up, so that the length it prints is long enough. */
  static String atLeastMm(double mm) {
    return plain(Math.ceil(mm * 100 - 1e-6) / 100) + " mm";
  }

  /** A bare number, as sizes are written. */
  static String plain(double value) {
    if (Double.isNaN(value)) {
      return "not a number";
    }
    if (Math.abs(value) >= 1e9) {
      return "far too " + (value > 0 ? "large" : "small");
    }
    return Math.abs(value) < 0.005 ? Decimals.counting(value, 2) : Decimals.upTo(value, 2);
  }
}
