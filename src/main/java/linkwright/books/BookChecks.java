package linkwright.books;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import linkwright.files.Checking;
import linkwright.files.Library;
import linkwright.job.EntryId;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/** Finds every problem of a job book: of its lines, and of the steps that its routine must have. */
public final class BookChecks {
  /** Two machines whose clocks are nearly right may write one book. */
  private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(1);

  private BookChecks() {}

  /**
   * Finds every problem of a book, located; one that cannot be opened is told too.
   *
   * @param now the time by this machine's clock, after which no entry can have been made
   */
  public static Checking.BookCheck at(Instant now) {
    return (path, library) -> of(path, library, now);
  }

  private static List<Problem> of(Path path, Supplier<Library> library, Instant now) {
    Read<BookFile> opened = BookFile.look(path);
    List<Problem> problems = new ArrayList<>();
    opened
        .problem()
        .ifPresent(sentence -> problems.add(new Problem(path.toString(), 0, 0, sentence, "")));
    opened
        .found()
        .ifPresent(
            book -> {
              BookOpening.newer(path)
                  .ifPresent(why -> problems.add(new Problem(path.toString(), 1, 1, why, "")));
              book.headless().ifPresent(problems::add);
              problems.addAll(book.problems());
              problems.addAll(book.unknownKinds());
              problems.addAll(ahead(book, now));
              problems.addAll(EarlyClocks.problems(book));
              problems.addAll(
                  book.unknownSteps(id -> Optional.ofNullable(library.get().routines().get(id))));
            });
    return problems;
  }

  /** The first entry that lies in the future: one clock was wrong, then or now. */
  private static List<Problem> ahead(BookFile book, Instant now) {
    Instant latest = now.plus(CLOCKS_DIFFER);
    List<BookScan.ScannedLine> ahead =
        book.rows().stream()
            .filter(row -> row.entry().map(entry -> entry.at().isAfter(latest)).orElse(false))
            .toList();
    if (ahead.isEmpty()) {
      return List.of();
    }
    BookLine first = ahead.get(0).entry().orElseThrow();
    return List.of(
        new Problem(
            book.path().toString(),
            ahead.get(0).line(),
            1,
            "Entry "
                + first.number()
                + " of "
                + EntryId.shown(first.device())
                + " lies in the future, at "
                + first.at()
                + (ahead.size() == 1 ? "" : ", and " + (ahead.size() - 1) + " more do"),
            "It is kept and used. Set this computer's clock right if it is behind; else the clock"
                + " was ahead when the entry was made."));
  }
}
