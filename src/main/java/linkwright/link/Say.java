package linkwright.link;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as the sentences of this package write them. */
final class Say {
  private Say() {}

  /** Millimetres to 0.01 mm, trailing zeros dropped. */
  static String mm(double mm) {
    return number(mm) + " mm";
  }

  /** A least length, rounded up, so that the length it prints is long enough. */
  static String atLeastMm(double mm) {
    return number(Math.ceil(mm * 100 - 1e-6) / 100) + " mm";
  }

  /** At most two decimals, none that are zero. */
  static String number(double value) {
    if (Double.isNaN(value)) {
      return "not a number";
    }
    if (Double.isInfinite(value) || Math.abs(value) >= 1e9) {
      return "far too " + (value > 0 ? "large" : "small");
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    if (rounded.signum() == 0 && value != 0) {
      return String.format(Locale.ROOT, "%.1e", value);
    }
    return rounded.stripTrailingZeros().toPlainString();
  }
}
