package linkwright.books;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32C;
import linkwright.files.yaml.YamlScalar;

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
    YamlScalar.word(out, line.device());
    if (!line.person().isEmpty()) {
      out.append(", by: ");
      YamlScalar.quoted(out, line.person());
    }
    if (!after.isEmpty()) {
      out.append(", after: ");
      YamlScalar.quoted(out, after);
    }
    out.append(", kind: ");
    YamlScalar.word(out, line.kind());
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

  private static void field(StringBuilder out, String key, Object value, boolean comma) {
    if (comma) {
      out.append(", ");
    }
    YamlScalar.word(out, key);
    out.append(": ");
    value(out, value);
  }

  private static void value(StringBuilder out, Object value) {
    if (value instanceof String text) {
      YamlScalar.quoted(out, text);
    } else if (value instanceof Double number) {
      out.append(YamlScalar.decimal(number));
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
}
