package linkwright.books;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** By what a job book is known, before anything is done to a file. */
final class BookMarks {
  /** How every book's header begins, whatever its format. */
  static final String TITLE = "# Linkwright job book";

  /** A header stands among the first lines, after what an editor may have put before it. */
  private static final int LOOKED_AT = 1000;

  private static final String NAMED = TITLE + ", format ";
  private static final Pattern DIGITS = Pattern.compile("\\d{1,4}");

  private BookMarks() {}

  /** Why a file is no book; empty if it is one. */
  static Optional<String> whyNone(Path path, byte[] bytes) {
    return hasTitle(bytes) && !isWide(bytes)
        ? Optional.empty()
        : whyNone(path, bytes, BookScan.of(bytes));
  }

  /** The same for a file whose lines are known already. */
  static Optional<String> whyNone(Path path, byte[] bytes, BookScan scan) {
    if (isWide(bytes)) {
      return Optional.of(
          path
              + " is not written in UTF-8, so it is not read and left as it is: save it as UTF-8"
              + " in your editor.");
    }
    // What was cut off while it was made holds nothing but a beginning of its header.
    boolean begun = scan.wholeBytes() == 0 && scan.rows().isEmpty();
    boolean book =
        begun || hasTitle(bytes) || scan.rows().stream().anyMatch(row -> row.entry().isPresent());
    return book
        ? Optional.empty()
        : Optional.of(
            path
                + " is no job book: it has neither the header of one nor an entry, so it is left"
                + " as it is. Line 1 of one begins “"
                + NAMED
                + BookText.FORMAT
                + "”.");
  }

  /** Whether the line that a book begins with stands before its first entry. */
  static boolean beginsWithTitle(byte[] bytes) {
    String start = new String(bytes, 0, Math.min(LOOKED_AT, bytes.length), StandardCharsets.UTF_8);
    return start
        .replace("\uFEFF", "")
        .lines()
        .takeWhile(line -> !line.startsWith("- "))
        .anyMatch(line -> line.startsWith(TITLE));
  }

  /** The highest format that the book's comments name; 1 if they name none. */
  static int format(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    int highest = 1;
    for (int at = text.indexOf(NAMED); at >= 0; at = text.indexOf(NAMED, at + 1)) {
      boolean startsLine = at == 0 || "\n\r\u00BF".indexOf(text.charAt(at - 1)) >= 0;
      Matcher number = DIGITS.matcher(text).region(at + NAMED.length(), text.length());
      if (startsLine && number.lookingAt()) {
        highest = Math.max(highest, Integer.parseInt(number.group()));
      }
    }
    return highest;
  }

  private static boolean hasTitle(byte[] bytes) {
    String start =
        new String(bytes, 0, Math.min(LOOKED_AT, bytes.length), StandardCharsets.UTF_8)
            .replace('\r', '\n');
    return start.startsWith(TITLE)
        || start.startsWith("\uFEFF" + TITLE)
        || start.contains("\n" + TITLE);
  }

  /** Whether two or four bytes stand for a character: then there is a zero byte near the start. */
  private static boolean isWide(byte[] bytes) {
    boolean marked =
        bytes.length >= 2
            && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
    boolean zeros =
        bytes.length >= 4
            && (bytes[0] == 0) != (bytes[1] == 0)
            && (bytes[2] == 0) != (bytes[3] == 0);
    boolean four =
        bytes.length >= 8 && bytes[0] == 0 && bytes[1] == 0 && bytes[2] == 0 && bytes[3] != 0;
    return marked || zeros || four;
  }
}
