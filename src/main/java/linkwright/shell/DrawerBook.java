package linkwright.shell;

import java.nio.file.Files;
import java.nio.file.LinkOption;
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
  private DrawerBook() {}

  /** Its entries; none while there is no book, or while it cannot be read. */
  static List<Entry> entries(Home home) {
    return look(home)
        .map(read -> read.map(DrawerBook::entries).orElse(List.of()))
        .orElse(List.of());
  }

  private static List<Entry> entries(BookFile book) {
    return EntryLines.entries(book.lines());
  }

  /** What is wrong with it, with its place; it stops nothing. */
  public static List<String> problems(Home home) {
    return look(home)
        .map(
            read ->
                read.problem()
                    .map(List::of)
                    .orElseGet(
                        () -> read.orThrow().problems().stream().map(Problem::sentence).toList()))
        .orElse(List.of());
  }

  /** The book, or why it is none of hers; empty while there is none. */
  private static Optional<Read<BookFile>> look(Home home) {
    if (!Files.exists(home.drawer(), LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    return Optional.of(
        home.leadsOut(home.drawer())
            .map(Read::<BookFile>bad)
            .orElseGet(() -> BookFile.look(home.drawer()).flatMap(DrawerBook::ofDrawer)));
  }

  /** A job's book that was laid there is not to be counted in, or added to. */
  private static Read<BookFile> ofDrawer(BookFile book) {
    boolean jobs = entries(book).stream().anyMatch(entry -> entry.fact() instanceof Fact.JobOpened);
    return jobs
        ? Read.bad(book.path() + " is a job's book, not the drawer's: move it away.")
        : Read.good(book);
  }

  /** Enters a fact and syncs it; answers with what is wrong, if it is not there then. */
  public static Optional<String> keep(Home home, String device, Instant now, Fact fact) {
    return keep(home, device, now, List.of(fact));
  }

  /** The same for several, in one write. */
  public static Optional<String> keep(Home home, String device, Instant now, List<Fact> facts) {
    Optional<String> none = look(home).flatMap(Read::problem);
    return none.isPresent()
        ? none
        : Appending.into(BookFile.openOrMake(home.drawer(), device, now), device, now, facts);
  }
}
