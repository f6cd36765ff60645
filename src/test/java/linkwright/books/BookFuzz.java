package linkwright.books;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Bytes for a fuzzer, and for the corpus that it left: whatever a line of a book may hold. */
public final class BookFuzz {
  private BookFuzz() {}

  /** Reads the bytes as a book and as one line; throws where something does not hold. */
  public static void read(byte[] data) {
    BookScan scan = BookScan.of(data);
    BookReading reading = BookReading.of("it.yaml", scan.rows());
    reading.problems().forEach(problem -> require(!problem.sentence().isBlank(), "no sentence"));
    String line = new String(data, StandardCharsets.UTF_8);
    Optional<ParsedLine> quick = BookParser.parse(line);
    if (quick.isPresent()) {
      require(quick.equals(YamlLine.parse(line)), "read otherwise than by a YAML reader");
      ParsedLine parsed = quick.get();
      String written = BookText.encode(parsed.entry(), parsed.after());
      String bare = written.substring(0, written.lastIndexOf(BookText.CHECK_MARK));
      require(
          BookParser.parse(bare).map(ParsedLine::entry).equals(Optional.of(parsed.entry())),
          "written and read again it is another entry");
    }
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
