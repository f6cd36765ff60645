package linkwright.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text made safe for a grid of cells and measured in columns.
 *
 * <p>Everything that a user or a file brings goes through {@link #safe} before it is shown; the
 * canvas of the view does so by itself. A job called with an escape sequence in its name then shows
 * what it holds and does nothing.
 */
public final class Text {
  /** Stands for whatever can't be shown: a control, a mark that combines, a direction, an emoji. */
  public static final String SIGN = "□";

  /** One character as a reader sees it, with all marks and joiners that belong to it. */
  private static final Pattern CLUSTER = Pattern.compile("\\X");

  /** What stands behind a figure and must not begin a line without it. */
  private static final Pattern UNIT =
      Pattern.compile("(%|°[CF]?|mm|cm|m|in|g|kg|dwt|ozt?|lbf?|N|h|min|s|AWG)(?![\\p{L}\\d])");

  private Text() {}

  /**
   * The same text with each character in a cell or two of its own: composed (NFC), every kind of
   * space a plain space, and {@link #SIGN} for what can't be shown. Safe text stays as it is.
   */
  public static String safe(String text) {
    if (isPlain(text) || isShowable(text)) {
      return text;
    }
    StringBuilder safe = new StringBuilder(text.length());
    Matcher clusters = CLUSTER.matcher(Normalizer.normalize(text, Normalizer.Form.NFC));
    while (clusters.find()) {
      appendCluster(safe, clusters.group());
    }
    return safe.toString();
  }

  private static void appendCluster(StringBuilder safe, String cluster) {
    char first = cluster.charAt(0);
    boolean space = first == '\t' || Character.getType(first) == Character.SPACE_SEPARATOR;
    boolean whole = space || Columns.of(first) > 0;
    if (whole) {
      safe.append(space ? ' ' : first);
      for (int i = 1; i < cluster.length(); i++) {
        char c = cluster.charAt(i);
        if (Columns.of(c) > 0) {
          safe.append(c);
        } else {
          whole = false;
        }
      }
    }
    // One sign for all the rest of a cluster: five joined emoji are one thing to the reader.
    if (!whole) {
      safe.append(SIGN);
    }
  }

  /** Columns that the text takes once safe. */
  public static int width(String text) {
    if (isPlain(text)) {
      return text.length();
    }
    return widthOfSafe(safe(text));
  }

  /** The text, safe, in no more than these columns; what was cut shows as {@code …} at the end. */
  public static String cut(String text, int columns) {
    return cut(text, columns, "…");
  }

  /** As {@link #cut(String, int)}, with another mark, one column wide. */
  public static String cut(String text, int columns, String mark) {
    String safe = safe(text);
    if (widthOfSafe(safe) <= columns) {
      return safe;
    }
    if (columns <= 0) {
      return "";
    }
    return safe.substring(0, fitting(safe, 0, columns - 1)) + mark;
  }

  /** The text, safe, cut or filled up with spaces to exactly these columns. */
  public static String pad(String text, int columns) {
    String cut = cut(text, columns);
    return cut + " ".repeat(Math.max(0, columns - widthOfSafe(cut)));
  }

  /**
   * The text, safe, as lines of no more than these columns, broken at spaces, and inside a word
   * only where the word is longer than a line. Line breaks in the text are kept. Always one line at
   * least.
   *
   * @throws IllegalArgumentException if columns is below 2, in which a wide character has no room
   */
  public static List<String> wrap(String text, int columns) {
    if (columns < 2) {
      throw new IllegalArgumentException("Can't wrap into " + columns + " columns");
    }
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\\R", -1)) {
      wrapParagraph(safe(paragraph), columns, lines);
    }
    return List.copyOf(lines);
  }

  private static void wrapParagraph(String safe, int columns, List<String> lines) {
    int from = 0;
    while (true) {
      int to = fitting(safe, from, columns);
      if (to == safe.length()) {
        lines.add(safe.substring(from).stripTrailing());
        return;
      }
      int space = lastSpace(safe, from, to);
      int end = space > from ? space : to;
      lines.add(safe.substring(from, end).stripTrailing());
      from = end;
      while (from < safe.length() && safe.charAt(from) == ' ') {
        from++;
      }
      if (from == safe.length()) {
        return;
      }
    }
  }

  /** The last space up to a place at which a line may end: none parts a figure from its unit. */
  private static int lastSpace(String safe, int from, int to) {
    int last = safe.charAt(to) == ' ' ? to : safe.lastIndexOf(' ', to - 1);
    int space = last;
    while (space > from && Character.isDigit(safe.charAt(space - 1)) && unitAt(safe, space + 1)) {
      space = safe.lastIndexOf(' ', space - 1);
    }
    return space > from ? space : last;
  }

  private static boolean unitAt(String safe, int from) {
    return UNIT.matcher(safe).region(from, safe.length()).lookingAt();
  }

  /** Where to stop so that safe text from a place on takes no more than these columns. */
  private static int fitting(String safe, int from, int columns) {
    int used = 0;
    for (int i = from; i < safe.length(); i++) {
      used += Columns.of(safe.charAt(i));
      if (used > columns) {
        return i;
      }
    }
    return safe.length();
  }

  /** Columns that text takes which is safe already. */
  public static int widthOfSafe(String safe) {
    int width = 0;
    for (int i = 0; i < safe.length(); i++) {
      width += Columns.of(safe.charAt(i));
    }
    return width;
  }

  private static boolean isShowable(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Columns.of(text.charAt(i)) == 0) {
        return false;
      }
    }
    return Normalizer.isNormalized(text, Normalizer.Form.NFC);
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c >= 0x7F) {
        return false;
      }
    }
    return true;
  }
}
