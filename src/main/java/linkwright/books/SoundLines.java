package linkwright.books;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of the shape of a book's in files that are no book: each closed by its check. */
public final class SoundLines {
  private SoundLines() {}

  /** Those whose check fits; all else is passed over. */
  public static List<BookLine> in(byte[] bytes) {
    return BookScan.of(bytes).rows().stream()
        .filter(BookScan.ScannedLine::sound)
        .flatMap(row -> row.entry().stream())
        .toList();
  }

  /** A file of them. */
  public static byte[] written(List<BookLine> lines) {
    return lines.stream()
        .map(line -> BookText.encode(line, "") + "\n")
        .collect(Collectors.joining())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** The check of a whole file. */
  public static String check(byte[] bytes) {
    return BookText.check(bytes);
  }
}
