package linkwright.exchange.forms;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes values as JSON (RFC 8259), in their order, two spaces a level. */
public final class JsonOut {
  private JsonOut() {}

  /**
   * The text of a document, each line ended.
   *
   * @param value a Map, List, Double, Integer, Long, BigDecimal (its digits are kept), Boolean,
   *     String or Optional of these
   */
  public static String of(Object value) {
    return written(value, "") + "\n";
  }

  private static String written(Object value, String indent) {
    String inner = indent + "  ";
    if (value instanceof Optional<?> maybe) {
      return maybe.map(some -> written(some, indent)).orElse("null");
    }
    if (value instanceof Map<?, ?> map) {
      return map.isEmpty()
          ? "{}"
          : map.entrySet().stream()
              .map(
                  e ->
                      inner
                          + quoted(String.valueOf(e.getKey()))
                          + ": "
                          + written(e.getValue(), inner))
              .collect(Collectors.joining(",\n", "{\n", "\n" + indent + "}"));
    }
    if (value instanceof List<?> list) {
      return list.isEmpty()
          ? "[]"
          : list.stream()
              .map(item -> inner + written(item, inner))
              .collect(Collectors.joining(",\n", "[\n", "\n" + indent + "]"));
    }
    if (value instanceof Double number) {
      return YamlOut.number(number);
    }
    if (value instanceof BigDecimal told) {
      return told.toPlainString();
    }
    return value instanceof Number || value instanceof Boolean
        ? value.toString()
        : quoted(String.valueOf(value));
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (c < ' ' || c == 0x7f || c == 0x2028 || c == 0x2029) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
