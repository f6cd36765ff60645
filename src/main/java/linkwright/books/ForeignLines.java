package linkwright.books;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookScan.ScannedLine;

/**
 * Lines in another shape than our own, written by hand or by another program. A whole YAML reader
 * is a hundred times slower than our own, so of lines whose checks do not fit it is given the first
 * alone: a book in which thousands do not fit is none, and nobody reads what each of them says.
 */
final class ForeignLines {
  /** More than any job has entries, and read in a quarter of a second. */
  private static final int MOST_UNSOUND = 3000;

  private ForeignLines() {}

  /**
   * A line as far as our own reader knows it.
   *
   * @param row the line
   * @param foreign what of it may be an entry in another shape, to be tried in this order
   */
  record Begun(ScannedLine row, List<String> foreign) {}

  /** A line whose check is right, and its text without that. */
  static Begun begun(ScannedLine row, String text) {
    return begun(row, List.of(text));
  }

  /** What a line with a bad check would say: junk before the entry and the check are passed by. */
  static Begun suspect(ScannedLine row) {
    String text = row.text();
    int start = text.indexOf("- {");
    if (start < 0) {
      return new Begun(row, List.of());
    }
    int mark = text.lastIndexOf(" #");
    String whole = text.substring(start);
    return begun(row, mark > start ? List.of(text.substring(start, mark), whole) : List.of(whole));
  }

  private static Begun begun(ScannedLine row, List<String> texts) {
    for (String text : texts) {
      Optional<ParsedLine> own = BookParser.parse(text);
      if (own.isPresent()) {
        return new Begun(row.saying(own), List.of());
      }
    }
    return new Begun(row, texts.stream().filter(ForeignLines::mayBeEntry).toList());
  }

  /** An entry closes on its line and says its kind, though perhaps in escaped letters. */
  private static boolean mayBeEntry(String line) {
    return line.indexOf('}') > 0 && (line.contains("kind") || line.indexOf('\\') > 0);
  }

  /** The lines with what those of another shape say. */
  static List<ScannedLine> read(List<Begun> lines) {
    List<ScannedLine> rows = new ArrayList<>(lines.size());
    int unsound = 0;
    for (Begun line : lines) {
      boolean foreign = !line.foreign().isEmpty();
      unsound += foreign && !line.row().sound() ? 1 : 0;
      boolean tried = foreign && (line.row().sound() || unsound <= MOST_UNSOUND);
      rows.add(tried ? line.row().saying(said(line.foreign())) : line.row());
    }
    return List.copyOf(rows);
  }

  private static Optional<ParsedLine> said(List<String> texts) {
    for (String text : texts) {
      Optional<ParsedLine> entry = YamlLine.parse(text);
      if (entry.isPresent()) {
        return entry;
      }
    }
    return Optional.empty();
  }
}
