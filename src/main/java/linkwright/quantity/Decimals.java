package linkwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Bare numbers as they are written for reading: rounded half up as they would be on paper, never as
 * a power of ten, with a true minus sign.
 */
public final class Decimals {
  /**
   * Digits that a figure is known with: what comes after them is how a processor rounds, and would
   * tell 13.325 in as 13.33 or as 13.32, depending on the order in which its parts were added.
   */
  private static final MathContext KNOWN = new MathContext(12, RoundingMode.HALF_UP);

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
   * As many decimals as it has, one at least, to be read back: with the minus sign of a keyboard.
   */
  public static String exactly(double value) {
    return finite(value).toPlainString();
  }

  /** The number that a text is, if it is nothing but digits with a point or comma between. */
  public static Optional<Double> read(String text) {
    return text.matches("[+-]?[0-9]+([.,][0-9]+)?")
        ? Optional.of(Double.parseDouble(text.replace(',', '.')))
        : Optional.empty();
  }

  /** The number that a text written for reading is, with just its digits; empty if it is none. */
  public static Optional<BigDecimal> asTold(String text) {
    return text.matches("[\u2212-]?(0|[1-9][0-9]*)(\\.[0-9]+)?")
        ? Optional.of(new BigDecimal(text.replace('\u2212', '-')))
        : Optional.empty();
  }

  /** An amount of money with what it is counted in, where that is said. */
  public static String money(double amount, String currency) {
    return (fixed(amount, 2) + " " + currency).strip();
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
   * How many decimals a doubt lets a figure have, negative before the decimal sign. Of its three
   * first digits 100 to 354 leave two that count, 355 to 949 one, 950 and more are 1000 and leave
   * two. Source: Particle Data Group, Review of Particle Physics, Introduction, "Rounding" (from
   * memory).
   *
   * @param doubt one standard deviation, above 0
   */
  public static int placesBy(double doubt) {
    int first = (int) Math.floor(Math.log10(doubt));
    double digits = Math.round(doubt / Math.pow(10, first - 2.0));
    return digits >= 950 ? -first : digits >= 355 ? -first : 1 - first;
  }

  /**
   * A forecast with its doubt, both rounded to what the doubt lets stand: {@code 457 ± 17}. Zeros
   * that both end in after the decimal sign are left out.
   *
   * @param doubt one standard deviation, above 0
   */
  public static String withDoubt(double value, double doubt) {
    int places = placesBy(doubt);
    BigDecimal told = exact(value).setScale(places, RoundingMode.HALF_UP);
    BigDecimal by = exact(doubt).setScale(places, RoundingMode.HALF_UP);
    int least =
        Math.max(0, Math.max(told.stripTrailingZeros().scale(), by.stripTrailingZeros().scale()));
    return text(told.setScale(least, RoundingMode.HALF_UP))
        + " ± "
        + text(by.setScale(least, RoundingMode.HALF_UP));
  }

  /** A figure rounded to what a doubt of it lets stand. */
  public static String roundedBy(double value, double doubt) {
    return text(exact(value).setScale(placesBy(doubt), RoundingMode.HALF_UP));
  }

  /** A forecast: from hundreds on it is known to no better than a tenth; our own choice. */
  public static String foreseen(double value, int places) {
    return value >= 100 ? roundedBy(value, value / 10) : upTo(value, places);
  }

  /** Of a hundred so many, with so many decimals: a share without its sign. */
  public static String ofHundred(double share, int places) {
    return fixed(100 * share, places);
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
    return finite(value).round(KNOWN);
  }

  private static BigDecimal finite(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("value must be a finite number, not " + value);
    }
    return BigDecimal.valueOf(value);
  }

  private static String text(BigDecimal value) {
    return (value.signum() == 0 ? value.abs() : value).toPlainString().replace('-', '−');
  }
}
