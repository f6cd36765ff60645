package linkwright.exchange.forms;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes values as YAML, in their order, for scripts.
 *
 * <p>Numbers are in plain decimal notation, rounded to six decimals, small ones to six digits that
 * count; a whole number that was reckoned with decimals keeps its {@code .0}. An empty Optional is
 * written as {@code null}.
 */
public final class YamlOut {
  private static final int DECIMALS = 6;

  /** Text that YAML takes for nothing but text, without quotes. */
  private static final Pattern BARE = Pattern.compile("\\p{L}[\\p{L}\\p{N} _/.-]*(?<! )");

  private static final Set<String> TAKEN =
      Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n");

  private YamlOut() {}

  /**
   * The text of a document, each line ended.
   *
   * @param values key → Double, Integer, Long, BigDecimal (its digits are kept), Boolean, String,
   *     Optional, or a List or a Map of these
   * @throws IllegalArgumentException if a value is of another kind, or a number is not finite
   */
  public static String of(Map<String, ?> values) {
    if (values.isEmpty()) {
      return "{}\n";
    }
    StringBuilder text = new StringBuilder();
    mapping(text, values, "", "");
    return text.toString();
  }

  private static void mapping(
      StringBuilder text, Map<?, ?> values, String firstIndent, String indent) {
    String before = firstIndent;
    for (Map.Entry<?, ?> each : values.entrySet()) {
      text.append(before).append(string(String.valueOf(each.getKey()))).append(':');
      below(text, plain(each.getValue()), indent + "  ");
      before = indent;
    }
  }

  private static void below(StringBuilder text, Object value, String indent) {
    if (value instanceof Map<?, ?> map && !map.isEmpty()) {
      text.append('\n');
      mapping(text, map, indent, indent);
    } else if (value instanceof List<?> list && nested(list)) {
      text.append('\n');
      for (Object item : list) {
        item(text, plain(item), indent);
      }
    } else {
      text.append(' ').append(inline(value)).append('\n');
    }
  }

  private static void item(StringBuilder text, Object item, String indent) {
    if (item instanceof Map<?, ?> map && !map.isEmpty()) {
      mapping(text, map, indent + "- ", indent + "  ");
    } else {
      text.append(indent).append("- ").append(inline(item)).append('\n');
    }
  }

  /** Whether a list is written a line an item; numbers stay on one line. */
  private static boolean nested(List<?> list) {
    return list.stream().map(YamlOut::plain).anyMatch(i -> i instanceof Map || i instanceof String);
  }

  private static String inline(Object value) {
    if (value instanceof Map<?, ?> map && map.isEmpty()) {
      return "{}";
    }
    if (value instanceof List<?> list) {
      return "[" + String.join(", ", list.stream().map(item -> inline(plain(item))).toList()) + "]";
    }
    if (value instanceof Double number) {
      return number(number);
    }
    if (value instanceof BigDecimal told) {
      return told.toPlainString();
    }
    if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      return value.toString();
    }
    if (value instanceof String words) {
      return string(words);
    }
    if (value instanceof Optional<?> none && none.isEmpty()) {
      return "null";
    }
    throw new IllegalArgumentException("value cannot be written as YAML: " + value);
  }

  private static Object plain(Object value) {
    return value instanceof Optional<?> some && some.isPresent() ? plain(some.get()) : value;
  }

  /** A number in plain decimal notation. */
  public static String number(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("value must be a finite number, not " + value);
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal rounded = exact.setScale(DECIMALS, RoundingMode.HALF_EVEN);
    if (Math.abs(value) < 0.1) {
      rounded = exact.round(new MathContext(DECIMALS, RoundingMode.HALF_EVEN));
    }
    rounded = rounded.stripTrailingZeros();
    return (rounded.scale() < 1 ? rounded.setScale(1) : rounded).toPlainString();
  }

  private static String string(String words) {
    boolean bare = BARE.matcher(words).matches() && !TAKEN.contains(words.toLowerCase(Locale.ROOT));
    if (bare) {
      return words;
    }
    StringBuilder quoted = new StringBuilder("\"");
    words
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (c < ' ' || c == 0x7f || c == 0x85 || c == 0x2028 || c == 0x2029) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
