package linkwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Bare numbers as they are written for reading: rounded half up as they would be on paper, never as
 * a power of ten, with a true minus sign.
 */
public final class Decimals {
  private Decimals() {}

  /**
   * At most so many decimals, without zeros at the end.
   *
   * @throws IllegalArgumentException if the value is no finite number
   */
  public static String upTo(double value, int places) {
    return text(exact(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros());
  }

  /**
   * Exactly so many decimals, as money is written.
   *
   * @throws IllegalArgumentException if the value is no finite number
   */
  public static String fixed(double value, int places) {
    return text(exact(value).setScale(places, RoundingMode.HALF_UP));
  }

  /**
   * So many digits that count, more where the whole part has more, without zeros at the end.
   *
   * @throws IllegalArgumentException if the value is no finite number
   */
  public static String counting(double value, int digits) {
    BigDecimal exact = exact(value);
    int whole = exact.precision() - exact.scale();
    MathContext context = new MathContext(Math.max(digits, whole), RoundingMode.HALF_UP);
    return text(exact.round(context).stripTrailingZeros());
  }

  /**
   * A share as a percentage, with at most so many decimals.
   *
   * @throws IllegalArgumentException if the share is no finite number
   */
  public static String percent(double share, int places) {
    return upTo(100 * share, places) + " %";
  }

  private static BigDecimal exact(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("value must be a finite number, not " + value);
    }
    return BigDecimal.valueOf(value);
  }

  private static String text(BigDecimal value) {
    return (value.signum() == 0 ? value.abs() : value).toPlainString().replace('-', '−');
  }
}
