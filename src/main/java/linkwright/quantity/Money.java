package linkwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of money as it is typed: {@code 90}, {@code 90,50}, {@code 90 EUR}, {@code £90}.
 *
 * @param amount how much, 0 or more
 * @param currency the sign or letters beside it; empty where none is written
 */
public record Money(double amount, String currency) {
  private static final Pattern TYPED =
      Pattern.compile(
          "(\\p{Sc}|\\p{L}{1,4})? ?(\\d{1,9}(?:[.,]\\d{1,4})?) ?(\\p{Sc}|\\p{L}{1,4})?");

  /** Reads it; a word on both sides of the number is refused, for one of them is a slip. */
  public static Read<Money> read(String typed) {
    Matcher read = TYPED.matcher(Written.tidy(typed));
    if (!read.matches() || (read.group(1) != null && read.group(3) != null)) {
      return Read.bad(
          "“" + typed.strip() + "” is not an amount of money: write it as 12.50 or 12.50 EUR.");
    }
    String currency =
        read.group(1) != null ? read.group(1) : read.group(3) != null ? read.group(3) : "";
    return Read.good(new Money(Double.parseDouble(read.group(2).replace(',', '.')), currency));
  }
}
