package linkwright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as written and what follows it.
 *
 * @param number its value, negative if a minus sign came first
 * @param digits the number as it was written, for sentences that repeat it
 * @param rest what came after it, its unit most likely
 */
record Written(double number, String digits, String rest) {
  private static final Pattern MIXED =
      Pattern.compile("(\\d{1,15})[ -]+(\\d{1,15}) ?/ ?(\\d{1,15})(?![\\d.,/])");
  private static final Pattern FRACTION =
      Pattern.compile("(\\d{1,15}) ?/ ?(\\d{1,15})(?![\\d.,/])");
  private static final Pattern DECIMAL =
      Pattern.compile("((?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)");
  private static final Pattern THOUSANDS_OR_DECIMALS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern CONTINUED = Pattern.compile("[.,]?\\d");
  private static final Pattern GAPS = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");
  private static final Pattern MINUSES = Pattern.compile("[\\u2212\\u2013\\u2012\\ufe63\\uff0d]");
  private static final List<String> QUARTERS =
      List.of("½ 1/2", "¼ 1/4", "¾ 3/4", "⅛ 1/8", "⅜ 3/8", "⅝ 5/8", "⅞ 7/8", "⅓ 1/3", "⅔ 2/3");

  /** Reads a number, and keeps what follows; {@code example} is what would be right. */
  static Read<Written> read(String typed, String example) {
    String text = tidy(typed);
    if (text.isEmpty()) {
      return Read.bad("Nothing is written here. Write it like this: " + example + ".");
    }
    boolean negative = text.startsWith("-");
    String body = negative || text.startsWith("+") ? text.substring(1).strip() : text;
    String lower = body.toLowerCase(Locale.ROOT);
    if (lower.startsWith("nan") || lower.startsWith("inf") || lower.startsWith("∞")) {
      return Read.bad(quoted(typed) + " is not an amount. Write it like this: " + example + ".");
    }
    Matcher mixed = MIXED.matcher(body);
    Matcher fraction = FRACTION.matcher(body);
    Matcher decimal = DECIMAL.matcher(body);
    double value;
    int end;
    if (mixed.lookingAt()) {
      value = whole(mixed, 1) + whole(mixed, 2) / whole(mixed, 3);
      end = mixed.end();
    } else if (fraction.lookingAt()) {
      value = whole(fraction, 1) / whole(fraction, 2);
      end = fraction.end();
    } else if (decimal.lookingAt()) {
      if (THOUSANDS_OR_DECIMALS.matcher(decimal.group(1)).matches()
          && !CONTINUED.matcher(body.substring(decimal.end())).lookingAt()) {
        return Read.bad(twoWays(typed, negative, decimal.group(1), body.substring(decimal.end())));
      }
      value = Double.parseDouble(decimal.group(1).replace(',', '.'));
      end = decimal.end();
    } else {
      return Read.bad(
          quoted(typed) + " does not begin with a number. Write it like this: " + example + ".");
    }
    String rest = body.substring(end).strip();
    Optional<String> oddity = oddity(typed, rest, example);
    if (oddity.isPresent()) {
      return Read.bad(oddity.get());
    }
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return Read.bad(
          quoted(typed)
              + " is not a size that can be reckoned with. Write it like "
              + example
              + ".");
    }
    String digits = (negative ? "−" : "") + body.substring(0, end).strip();
    return Read.good(new Written(negative ? -value : value, digits, rest));
  }

  private static String twoWays(String typed, boolean negative, String digits, String rest) {
    String sign = negative ? "−" : "";
    String decimal = Decimals.upTo(Double.parseDouble(digits.replace(',', '.')), 3);
    return quoted(typed)
        + " can be read in two ways. Write "
        + sign
        + digits.replace(",", "")
        + rest.stripTrailing()
        + " or "
        + sign
        + (decimal.contains(".") ? decimal : decimal + ".0")
        + rest.stripTrailing()
        + ".";
  }

  /** Takes what follows as a unit and gives the amount in the unit used inside. */
  Read<Double> in(List<Unit> units, String kind, String example) {
    if (rest.isEmpty()) {
      String usual = units.get(0).names().get(0);
      return Read.bad(digits + " what? Write a unit, as in " + digits + " " + usual + ".");
    }
    Optional<Unit> unit = Unit.named(rest, units);
    if (unit.isPresent()) {
      return Read.good(number * unit.get().inside());
    }
    String like = "Write it like this: " + example + ".";
    Optional<String> other = Unit.kindOf(rest);
    if (other.isPresent()) {
      return Read.bad(quoted(rest) + " is " + other.get() + ", not " + kind + ". " + like);
    }
    String hint =
        Unit.meant(rest, units)
            .map(name -> "Did you mean " + digits + " " + name + "?")
            .orElse(like);
    return Read.bad(quoted(rest) + " is not " + kind + ". " + hint);
  }

  /** Refuses what is below nothing and what no bench can hold. */
  static Read<Double> withinReason(double amount, String typed, String noun, double most) {
    if (amount < 0) {
      return Read.bad(
          quoted(typed)
              + " is below nothing. "
              + noun
              + " can't be negative: leave the minus out.");
    }
    if (amount > most) {
      return Read.bad(quoted(typed) + " is more than any bench holds. Check the number.");
    }
    if (amount > 0 && amount < 1e-6) {
      return Read.bad(quoted(typed) + " is too small to measure. Check the number.");
    }
    return Read.good(amount);
  }

  /** What was typed, in quotes, cut short if it is long. */
  static String quoted(String typed) {
    String text = typed.strip();
    return "“" + (text.length() > 40 ? text.substring(0, 37) + "…" : text) + "”";
  }

  /** One kind of space, one kind of minus, fractions spelt out. */
  static String tidy(String typed) {
    String text = GAPS.matcher(typed).replaceAll(" ");
    text = MINUSES.matcher(text).replaceAll("-").replace('⁄', '/');
    for (String pair : QUARTERS) {
      text = text.replace(pair.substring(0, 1), " " + pair.substring(2));
    }
    return text.strip();
  }

  private static Optional<String> oddity(String typed, String rest, String example) {
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    char first = rest.charAt(0);
    if (first == '/') {
      return Optional.of(
          quoted(typed) + " has a fraction that can't be read. Write it like 1 1/2 in or 3/8 in.");
    }
    boolean grouped = Pattern.matches("['’_., ]?\\d.*", rest);
    if (grouped) {
      return Optional.of(
          quoted(typed)
              + " has more in it than one number. Write thousands without a gap or a mark,"
              + " a decimal with one comma or point, as in "
              + example
              + ".");
    }
    return Optional.empty();
  }

  private static double whole(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }
}
