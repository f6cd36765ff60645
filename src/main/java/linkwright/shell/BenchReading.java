package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.kernel.BenchBook;
import linkwright.files.Home;
import linkwright.job.JobState;
import linkwright.standing.Handbook;

/**
 * Looks at all books of a home for what is the bench's: hot work, waits, sittings. Nothing is
 * written and no book is held; one whose file is as it was is not read again.
 */
final class BenchReading {
  /** A book's file as it lay on the disk; compared whole. */
  private record Seen(Path path, FileTime changed, long bytes) {}

  private final Home home;
  private Map<Seen, BenchBook> known = Map.of();

  BenchReading(Home home) {
    this.home = home;
  }

  /** What each book gives that can be read, but for the one that is open. */
  List<BenchBook> books(Handbook handbook, Optional<Path> open) {
    List<Seen> seen =
        home.books().stream()
            .filter(path -> open.filter(path::equals).isEmpty())
            .flatMap(path -> seen(path).stream())
            .toList();
    Map<Seen, BenchBook> read = new HashMap<>();
    seen.parallelStream()
        .flatMap(
            book ->
                Optional.ofNullable(known.get(book))
                    .or(() -> read(book.path(), handbook))
                    .map(found -> Map.entry(book, found))
                    .stream())
        .toList()
        .forEach(each -> read.put(each.getKey(), each.getValue()));
    known = Map.copyOf(read);
    return seen.stream()
        .flatMap(book -> Optional.ofNullable(read.get(book)).map(held(book.path())).stream())
        .toList();
  }

  /** Only of what runs is it asked who writes it: nothing else hangs on that. */
  private static UnaryOperator<BenchBook> held(Path path) {
    return book ->
        book.held(!book.timers().running().isEmpty() && BookFile.isWrittenElsewhere(path));
  }

  private static Optional<Seen> seen(Path path) {
    try {
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      return Optional.of(new Seen(path, now.lastModifiedTime(), now.size()));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  private static Optional<BenchBook> read(Path path, Handbook handbook) {
    return BookFile.look(path)
        .found()
        .map(book -> EntryLines.entries(book.lines()))
        .map(entries -> JobState.replay(entries, handbook.stages()))
        .map(state -> BenchBook.of(TrayReading.slug(path), state, handbook));
  }
}
