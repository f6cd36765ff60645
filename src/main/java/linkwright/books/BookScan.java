package linkwright.books;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bytes of a job book, split into lines whose checks have been tried.
 *
 * @param rows every line that is not blank or a comment, in the order of the file
 * @param wholeBytes how many bytes at the start belong to whole lines; what follows is torn
 * @param endsOpen whether the last whole line still lacks its line end
 * @param lines how many lines there are, blank ones and comments among them; a torn one is none
 */
record BookScan(List<ScannedLine> rows, int wholeBytes, boolean endsOpen, int lines) {
  /**
   * One line.
   *
   * @param line where it stands, from 1
   * @param check the check of the whole line as it stands
   * @param sound whether the check at its end is there and right
   * @param text the line as it stands
   * @param parsed what it says, if it can be read
   */
  record ScannedLine(
      int line, String check, boolean sound, String text, Optional<ParsedLine> parsed) {
    ScannedLine movedDown(int lines) {
      return new ScannedLine(line + lines, check, sound, text, parsed);
    }

    ScannedLine saying(Optional<ParsedLine> entry) {
      return new ScannedLine(line, check, sound, text, entry);
    }

    Optional<BookLine> entry() {
      return parsed.map(ParsedLine::entry);
    }

    /** The check that stands at its end, right or wrong; empty if there is none. */
    String stated() {
      int mark = text.lastIndexOf(BookText.CHECK_MARK);
      String stated = mark < 0 ? "" : text.substring(mark + BookText.CHECK_MARK.length()).strip();
      return stated.length() == CHECK_DIGITS ? stated : "";
    }
  }

  private static final int CHECK_DIGITS = 8;

  /** In shorter books sharing out costs more than it saves. */
  private static final int MANY_LINES = 2000;

  private static final char REPLACED = '\uFFFD';
  private static final byte[] MARK = BookText.CHECK_MARK.getBytes(StandardCharsets.UTF_8);
  private static final int CHECK_LENGTH = MARK.length + CHECK_DIGITS;
  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
  private static final byte[] CR_LF = {'\r', '\n'};
  private static final byte[] ENTRY = "- {n: ".getBytes(StandardCharsets.UTF_8);
  private static final byte[] OURS = "# Linkwright".getBytes(StandardCharsets.UTF_8);
  private static final byte[] TITLE = BookMarks.TITLE.getBytes(StandardCharsets.UTF_8);

  static BookScan of(byte[] bytes) {
    List<Stretch> whole = new ArrayList<>();
    int from = startsWith(bytes, 0, BYTE_ORDER_MARK) ? BYTE_ORDER_MARK.length : 0;
    int line = 0;
    while (from < bytes.length) {
      line++;
      int end = from;
      while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
        end++;
      }
      if (end == bytes.length) {
        return lastLine(rows(bytes, whole), bytes, line, from);
      }
      whole.add(new Stretch(line, from, end));
      from = end + (startsWith(bytes, end, CR_LF) ? 2 : 1);
    }
    return new BookScan(rows(bytes, whole), bytes.length, false, line);
  }

  private record Stretch(int line, int from, int end) {}

  /** Each line is read by itself, so a long book is shared out. */
  private static List<ScannedLine> rows(byte[] bytes, List<Stretch> lines) {
    Stream<Stretch> shared = lines.size() > MANY_LINES ? lines.parallelStream() : lines.stream();
    return ForeignLines.read(shared.flatMap(line -> read(bytes, line).stream()).toList());
  }

  /**
   * A last line without a line end: torn if it begins as an entry or the header does and no check
   * shows it whole. Anything else was written by hand and stays, and so does a file of a few
   * letters, which may be anybody's.
   */
  private static BookScan lastLine(List<ScannedLine> before, byte[] bytes, int line, int from) {
    List<ScannedLine> rows = new ArrayList<>(before);
    int sound = soundEnd(bytes, from, bytes.length);
    if (sound > 0) {
      rows.addAll(rows(bytes, List.of(new Stretch(line, from, sound))));
      return new BookScan(List.copyOf(rows), sound, true, line);
    }
    boolean begins =
        line > 1
            ? beginsAs(bytes, from, ENTRY)
            : startsWith(bytes, from, ENTRY)
                || (startsWith(bytes, from, OURS) && beginsAs(bytes, from, TITLE));
    if (begins) {
      return new BookScan(List.copyOf(rows), from, false, line - 1);
    }
    rows.addAll(rows(bytes, List.of(new Stretch(line, from, bytes.length))));
    return new BookScan(List.copyOf(rows), bytes.length, true, line);
  }

  /** Whether what stands from there on begins with the start, or is itself a beginning of it. */
  private static boolean beginsAs(byte[] bytes, int from, byte[] start) {
    int length = Math.min(start.length, bytes.length - from);
    return Arrays.equals(bytes, from, from + length, start, 0, length);
  }

  /** The entry of a line and what stands behind its check; mostly the first alone. */
  private static List<ForeignLines.Begun> read(byte[] bytes, Stretch stretch) {
    int end = stretch.end();
    int sound = soundEnd(bytes, stretch.from(), end);
    int rest = sound > 0 ? sound : stretch.from();
    List<ForeignLines.Begun> rows = new ArrayList<>(1);
    if (sound > 0) {
      ScannedLine row = soundRow(bytes, stretch.line(), stretch.from(), sound);
      rows.add(ForeignLines.begun(row, withoutCheck(row.text(), bytes, stretch.from(), sound)));
    }
    if (rest < end && !isRemark(bytes, rest, end)) {
      String text = new String(bytes, rest, end - rest, StandardCharsets.UTF_8);
      String check = BookText.check(bytes, rest, end - rest);
      rows.add(
          ForeignLines.suspect(
              new ScannedLine(stretch.line(), check, false, text, Optional.empty())));
    }
    return rows;
  }

  /** What stands before the check; empty where it is no UTF-8. */
  private static String withoutCheck(String whole, byte[] bytes, int from, int end) {
    // No replacement character came of it: so nothing in it was malformed.
    return whole.indexOf(REPLACED) < 0
        ? whole.substring(0, whole.length() - CHECK_LENGTH)
        : utf8(bytes, from, end - CHECK_LENGTH).orElse("");
  }

  /** A line with a right check, before what it says is read. */
  private static ScannedLine soundRow(byte[] bytes, int line, int from, int end) {
    String whole = new String(bytes, from, end - from, StandardCharsets.UTF_8);
    String check = BookText.check(bytes, from, end - from);
    return new ScannedLine(line, check, true, whole, Optional.empty());
  }

  /**
   * Where the first stretch with a right check ends, counted from the start of the line; 0 if there
   * is none. Looking past the line's own end mends a line end that was overwritten: the entry
   * before it stays good.
   */
  private static int soundEnd(byte[] bytes, int from, int end) {
    for (int at = end - CHECK_LENGTH; at > from; at--) {
      if (isMark(bytes, at)) {
        String check = BookText.check(bytes, from, at - from);
        if (matches(bytes, at + MARK.length, check)) {
          return at + CHECK_LENGTH;
        }
      }
    }
    return 0;
  }

  private static boolean isMark(byte[] bytes, int at) {
    // Asked of every byte of a line whose check does not fit.
    return bytes[at + 1] == MARK[1]
        && Arrays.equals(bytes, at, at + MARK.length, MARK, 0, MARK.length);
  }

  private static boolean matches(byte[] bytes, int at, String check) {
    for (int i = 0; i < check.length(); i++) {
      if (bytes[at + i] != check.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** Blank lines, comments and document marks say nothing; a comment with a check once was one. */
  private static boolean isRemark(byte[] bytes, int from, int end) {
    if (startsWith(bytes, from, ENTRY)) {
      return false;
    }
    String text = new String(bytes, from, end - from, StandardCharsets.UTF_8).strip();
    return text.isEmpty()
        || text.equals("---")
        || (text.startsWith("#") && !text.contains(BookText.CHECK_MARK));
  }

  private static Optional<String> utf8(byte[] bytes, int from, int end) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, end - from))
              .toString());
    } catch (CharacterCodingException notUtf8) {
      return Optional.empty();
    }
  }

  private static boolean startsWith(byte[] bytes, int from, byte[] start) {
    return bytes.length - from >= start.length
        && Arrays.equals(bytes, from, from + start.length, start, 0, start.length);
  }
}
