package linkwright.files;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32C;

/** Writes book lines as text: one flow mapping a line, closed by a comment with its check. */
final class BookText {
  /** The keys that every entry carries itself, in the order written. */
  static final List<String> OWN_KEYS = List.of("n", "at", "device", "by", "after", "kind");

  /** The key of the device; an entry of the first format has none. */
  static final String DEVICE = "device";

  /** The key that holds the check of the same device's entry before. */
  static final String AFTER = "after";

  /** What stands between an entry and the eight hexadecimal digits of its check. */
  static final String CHECK_MARK = " # crc32c:";

  /** The first line of a new book: for whoever opens it in an editor. */
  static final String HEADER =
      "# Linkwright job book, format 2. One entry a line, only ever added to; the comment at the"
          + " end of a line is its check (CRC-32C of what stands before it), and after names the"
          + " check of the same device's entry before.";

  /** Stands before the first entry of the second format in a book that was begun in the first. */
  static final String FROM_HERE = "# Linkwright job book, format 2 from here on.";

  /** The newest format that this program writes and knows all about. */
  static final int FORMAT = 2;

  /** Words that YAML readers turn into something else when they stand without quotes. */
  private static final Set<String> RESERVED =
      Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

  private BookText() {}

  /**
   * The line for an entry, with its check, without the line end.
   *
   * @param after the check of the same device's entry before; empty for its first
   */
  static String encode(BookLine line, String after) {
    StringBuilder out = new StringBuilder(200);
    out.append("- {n: ").append(line.number()).append(", at: ").append(line.at());
    out.append(", device: ");
    word(out, line.device());
    if (!line.person().isEmpty()) {
      out.append(", by: ");
      quoted(out, line.person());
    }
    if (!after.isEmpty()) {
      out.append(", after: ");
      quoted(out, after);
    }
    out.append(", kind: ");
    word(out, line.kind());
    line.fields().forEach((key, value) -> field(out, key, value, true));
    out.append('}');
    String check = check(out.toString().getBytes(StandardCharsets.UTF_8));
    return out.append(CHECK_MARK).append(check).toString();
  }

  /** The CRC-32C of some bytes as eight hexadecimal digits. */
  static String check(byte[] bytes) {
    return check(bytes, 0, bytes.length);
  }

  static String check(byte[] bytes, int from, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, from, length);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  /** Whether a word may stand without quotes and still be read as text by any YAML reader. */
  static boolean isPlain(String word) {
    if (word.isEmpty() || RESERVED.contains(word.toLowerCase(Locale.ROOT))) {
      return false;
    }
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
      boolean inside = (c >= '0' && c <= '9') || c == '-' || c == '_';
      if (!(letter || (i > 0 && inside))) {
        return false;
      }
    }
    return true;
  }

  private static void field(StringBuilder out, String key, Object value, boolean comma) {
    if (comma) {
      out.append(", ");
    }
    word(out, key);
    out.append(": ");
    value(out, value);
  }

  private static void value(StringBuilder out, Object value) {
    if (value instanceof String text) {
      quoted(out, text);
    } else if (value instanceof Double number) {
      out.append(decimal(number));
    } else if (value instanceof List<?> list) {
      out.append('[');
      String comma = "";
      for (Object item : list) {
        out.append(comma);
        value(out, item);
        comma = ", ";
      }
      out.append(']');
    } else if (value instanceof Map<?, ?> map) {
      out.append('{');
      boolean comma = false;
      for (Map.Entry<?, ?> field : map.entrySet()) {
        field(out, (String) field.getKey(), field.getValue(), comma);
        comma = true;
      }
      out.append('}');
    } else {
      out.append(value);
    }
  }

  /** Some YAML readers take an exponent without a sign for text. */
  static String decimal(double number) {
    String text = Double.toString(number).replace('E', 'e');
    int exponent = text.indexOf('e');
    boolean unsigned = exponent > 0 && text.charAt(exponent + 1) != '-';
    return unsigned ? text.substring(0, exponent + 1) + "+" + text.substring(exponent + 1) : text;
  }

  private static void word(StringBuilder out, String word) {
    if (isPlain(word)) {
      out.append(word);
    } else {
      quoted(out, word);
    }
  }

  /** Double quotes, with an escape for whatever an editor or a YAML reader could not show. */
  static void quoted(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c == '\n') {
        out.append("\\n");
      } else if (c == '\t') {
        out.append("\\t");
      } else if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        out.append(c).append(text.charAt(++i));
      } else if (mustEscape(c)) {
        out.append(String.format(Locale.ROOT, "\\u%04X", (int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }

  private static boolean mustEscape(char c) {
    return c < 0x20
        || (c >= 0x7F && c <= 0x9F)
        || (c >= 0x2028 && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069)
        || c == 0xFEFF
        || c >= 0xFFFE
        || Character.isSurrogate(c);
  }
}
