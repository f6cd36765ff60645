package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * The drawer's own book, {@code drawer.yaml} in the user's folder: a book like a job's, of what
 * came and what the scale said. What jobs took stands in theirs.
 */
public final class DrawerBook {
  private static final String NAME = "drawer";

  private DrawerBook() {}

  private static Path path(Home home) {
    return home.folder().resolve(NAME + ".yaml");
  }

  /** Its entries; none while there is no book, or while it cannot be read. */
  static List<Entry> entries(Home home) {
    return Files.exists(path(home))
        ? BookFile.look(path(home))
            .found()
            .map(book -> EntryLines.entries(book.lines()))
            .orElse(List.of())
        : List.of();
  }

  /** What is wrong with it, with its place; it stops nothing. */
  public static List<String> problems(Home home) {
    if (!Files.exists(path(home))) {
      return List.of();
    }
    Read<BookFile> looked = BookFile.look(path(home));
    return looked
        .problem()
        .map(List::of)
        .orElseGet(() -> looked.orThrow().problems().stream().map(Problem::sentence).toList());
  }

  /** Enters a fact and syncs it; answers with what is wrong, if it is not there then. */
  public static Optional<String> keep(Home home, String device, Instant now, Fact fact) {
    Read<BookFile> opened =
        Files.exists(path(home))
            ? BookFile.open(path(home), device, now)
            : BookFile.create(home.folder(), NAME, device, now);
    if (opened instanceof Read.Bad<BookFile> bad) {
      return Optional.of(bad.sentence());
    }
    try (BookFile book = opened.orThrow()) {
      if (book.whyReadOnly().isPresent()) {
        return book.whyReadOnly();
      }
      Entry entry = new Entry(book.nextNumber(), now, device, "", fact);
      return book.append(List.of(EntryLines.line(entry))).problem();
    } catch (IOException alreadySafe) {
      // The entry was synced when it was made; a close that fails loses nothing.
      return Optional.empty();
    }
  }
}
