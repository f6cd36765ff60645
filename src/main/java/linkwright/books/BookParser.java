package linkwright.books;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.files.yaml.YamlScalar;

/**
 * Reads the one shape that {@link BookText} writes, much faster than a whole YAML reader. What it
 * does not know it leaves to {@link YamlLine}: it never guesses.
 */
final class BookParser {
  private static final char DELETE = 0x7F;

  private static final class Unfamiliar extends Exception {
    Unfamiliar() {
      super("not the shape that Linkwright writes", null, false, false);
    }
  }

  /** Words that every line has. */
  private static final Set<String> OWN = Set.copyOf(BookText.OWN_KEYS);

  private final String text;
  private int at;

  private BookParser(String text) {
    this.text = text;
  }

  /** The fields of such a mapping that stands alone, or empty if the shape is not our own. */
  static Optional<Map<String, Object>> fields(String mapping) {
    BookParser parser = new BookParser(mapping);
    try {
      Map<String, Object> fields = parser.map(1);
      return parser.at == mapping.length() ? Optional.of(fields) : Optional.empty();
    } catch (Unfamiliar unfamiliar) {
      return Optional.empty();
    }
  }

  /** The entry on a line without its check, or empty if the shape is not our own. */
  static Optional<ParsedLine> parse(String line) {
    BookParser parser = new BookParser(line);
    try {
      parser.expect("- ");
      Map<String, Object> fields = parser.map(0);
      if (parser.at != line.length()) {
        return Optional.empty();
      }
      return ParsedLine.of(fields);
    } catch (Unfamiliar unfamiliar) {
      return Optional.empty();
    }
  }

  private Map<String, Object> map(int depth) throws Unfamiliar {
    expect("{");
    Map<String, Object> fields = new LinkedHashMap<>();
    if (take('}')) {
      return fields;
    }
    do {
      String key = peek() == '"' ? quoted() : plain();
      expect(": ");
      Object value = depth == 0 && key.equals("at") && peek() != '"' ? time() : value(depth + 1);
      if (fields.put(key, value) != null) {
        throw new Unfamiliar();
      }
    } while (takeComma());
    expect("}");
    return fields;
  }

  private Object value(int depth) throws Unfamiliar {
    if (depth > FieldValues.DEEPEST + 1) {
      throw new Unfamiliar();
    }
    char first = peek();
    if (first == '"') {
      return quoted();
    }
    if (first == '{') {
      return map(depth);
    }
    if (first == '[') {
      return list(depth);
    }
    if (first == '-' || (first >= '0' && first <= '9')) {
      return number();
    }
    if (text.startsWith("true", at) && ends(at + 4)) {
      at += 4;
      return true;
    }
    if (text.startsWith("false", at) && ends(at + 5)) {
      at += 5;
      return false;
    }
    return plain();
  }

  private List<Object> list(int depth) throws Unfamiliar {
    expect("[");
    List<Object> items = new ArrayList<>();
    if (take(']')) {
      return items;
    }
    do {
      items.add(value(depth + 1));
    } while (takeComma());
    expect("]");
    return items;
  }

  private String time() {
    int from = at;
    while (!ends(at)) {
      at++;
    }
    return text.substring(from, at);
  }

  /** Only the digits that Java itself writes: YAML's octal, hexadecimal and base 60 are not. */
  private Object number() throws Unfamiliar {
    int from = at;
    boolean decimal = false;
    while (!ends(at)) {
      char c = text.charAt(at++);
      decimal |= c == '.' || c == 'e';
      if (!((c >= '0' && c <= '9') || c == '.' || c == 'e' || c == '-' || c == '+')) {
        throw new Unfamiliar();
      }
    }
    String digits = text.substring(from, at);
    try {
      if (decimal) {
        double value = Double.parseDouble(digits);
        if (!isSimple(digits) && !YamlScalar.decimal(value).equals(digits)) {
          throw new Unfamiliar();
        }
        return value;
      }
      long value = Long.parseLong(digits);
      if (!Long.toString(value).equals(digits)) {
        throw new Unfamiliar();
      }
      return value;
    } catch (NumberFormatException unreadable) {
      throw new Unfamiliar();
    }
  }

  /** A figure, a point and one figure more at least: any YAML reader takes it for what it is. */
  private static boolean isSimple(String digits) {
    int point = digits.indexOf('.');
    int first = digits.charAt(0) == '-' ? 1 : 0;
    boolean simple = point > first && point < digits.length() - 1;
    simple &= digits.charAt(first) != '0' || point == first + 1;
    for (int i = first; i < digits.length() && simple; i++) {
      simple = i == point || (digits.charAt(i) >= '0' && digits.charAt(i) <= '9');
    }
    return simple;
  }

  private String plain() throws Unfamiliar {
    int from = at;
    while (!ends(at) && text.charAt(at) != ':') {
      at++;
    }
    String word = text.substring(from, at);
    if (!OWN.contains(word) && !YamlScalar.isPlain(word)) {
      throw new Unfamiliar();
    }
    return word;
  }

  private String quoted() throws Unfamiliar {
    expect("\"");
    int from = at;
    while (at < text.length() && text.charAt(at) != '"' && text.charAt(at) != '\\') {
      requireOwn(text.charAt(at));
      at++;
    }
    if (peek() == '"') {
      return text.substring(from, at++);
    }
    StringBuilder out = new StringBuilder(text.substring(from, at));
    while (peek() != '"') {
      char c = text.charAt(at++);
      requireOwn(c);
      out.append(c == '\\' ? escaped() : c);
    }
    at++;
    return out.toString();
  }

  /** What is written escaped never stands as it is; some of it no YAML reader takes. */
  private static void requireOwn(char c) throws Unfamiliar {
    boolean ordinary = c >= ' ' && c < DELETE;
    if (!ordinary && YamlScalar.mustEscape(c) && !Character.isSurrogate(c)) {
      throw new Unfamiliar();
    }
  }

  private char escaped() throws Unfamiliar {
    char c = peek();
    at++;
    return switch (c) {
      case '"', '\\' -> c;
      case 'n' -> '\n';
      case 't' -> '\t';
      case 'u' -> hexadecimal();
      default -> throw new Unfamiliar();
    };
  }

  private char hexadecimal() throws Unfamiliar {
    if (at + 4 > text.length()) {
      throw new Unfamiliar();
    }
    int code = 0;
    for (int end = at + 4; at < end; at++) {
      int digit = Character.digit(text.charAt(at), 16);
      if (digit < 0) {
        throw new Unfamiliar();
      }
      code = code * 16 + digit;
    }
    return (char) code;
  }

  private boolean ends(int index) {
    if (index >= text.length()) {
      return true;
    }
    char c = text.charAt(index);
    return c == ',' || c == '}' || c == ']';
  }

  private char peek() throws Unfamiliar {
    if (at >= text.length()) {
      throw new Unfamiliar();
    }
    return text.charAt(at);
  }

  private boolean take(char wanted) throws Unfamiliar {
    boolean there = peek() == wanted;
    if (there) {
      at++;
    }
    return there;
  }

  private boolean takeComma() {
    boolean there = text.startsWith(", ", at);
    if (there) {
      at += 2;
    }
    return there;
  }

  private void expect(String wanted) throws Unfamiliar {
    if (!text.startsWith(wanted, at)) {
      throw new Unfamiliar();
    }
    at += wanted.length();
  }
}
