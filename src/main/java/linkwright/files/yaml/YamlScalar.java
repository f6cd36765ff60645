package linkwright.files.yaml;

import java.util.Locale;
import java.util.Set;

/** Writes single values so that any YAML reader takes them for what they are. */
public final class YamlScalar {
  /** Words that YAML readers turn into something else when they stand without quotes. */
  private static final Set<String> RESERVED =
      Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

  private static final int LONGEST_RESERVED = 5;

  private YamlScalar() {}

  /** Whether a word may stand without quotes and still be read as text by any YAML reader. */
  public static boolean isPlain(String word) {
    boolean mayBe = word.length() <= LONGEST_RESERVED;
    if (word.isEmpty() || (mayBe && RESERVED.contains(word.toLowerCase(Locale.ROOT)))) {
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

  /** A number; some YAML readers take an exponent without a sign for text. */
  public static String decimal(double number) {
    String text = Double.toString(number).replace('E', 'e');
    int exponent = text.indexOf('e');
    boolean unsigned = exponent > 0 && text.charAt(exponent + 1) != '-';
    return unsigned ? text.substring(0, exponent + 1) + "+" + text.substring(exponent + 1) : text;
  }

  /** The word, in quotes where it must. */
  public static void word(StringBuilder out, String word) {
    if (isPlain(word)) {
      out.append(word);
    } else {
      quoted(out, word);
    }
  }

  /** Double quotes, with an escape for whatever an editor or a YAML reader could not show. */
  public static void quoted(StringBuilder out, String text) {
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

  /** Whether a character is never written as it is, but by its number. */
  public static boolean mustEscape(char c) {
    return c < 0x20
        || (c >= 0x7F && c <= 0x9F)
        || (c >= 0x2028 && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069)
        || c == 0xFEFF
        || c >= 0xFFFE
        || Character.isSurrogate(c);
  }
}
