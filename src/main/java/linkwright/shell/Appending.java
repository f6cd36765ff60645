package linkwright.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.BookLine;
import linkwright.books.EntryLines;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.quantity.Read;

/** Entries put behind a book by a command, all in one write, while nobody else writes it. */
public final class Appending {
  private Appending() {}

  /** Into the book of a job; answers with what is wrong, if they are not there then. */
  public static Optional<String> to(Path book, String device, Instant now, List<Fact> facts) {
    return into(BookFile.open(book, device, now), device, now, facts);
  }

  static Optional<String> into(
      Read<BookFile> opened, String device, Instant now, List<Fact> facts) {
    if (opened instanceof Read.Bad<BookFile> bad) {
      return Optional.of(bad.sentence());
    }
    try (BookFile book = opened.orThrow()) {
      if (book.whyReadOnly().isPresent()) {
        return book.whyReadOnly();
      }
      List<BookLine> lines = new ArrayList<>();
      for (Fact fact : facts) {
        int number = book.nextNumber() + lines.size();
        lines.add(EntryLines.line(new Entry(number, now, device, "", fact)));
      }
      Optional<String> unkept = book.append(lines).problem();
      unkept.ifPresent(why -> book.discard());
      return unkept;
    } catch (IOException alreadySafe) {
      // The entries were synced when they were made; a close that fails loses nothing.
      return Optional.empty();
    }
  }
}
