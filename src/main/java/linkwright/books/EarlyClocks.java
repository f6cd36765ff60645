package linkwright.books;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import linkwright.job.EntryId;
import linkwright.quantity.Problem;

/** Devices whose clock stood before the job was begun: their times cannot be when it was done. */
final class EarlyClocks {
  /** The kind of the entry with which a job begins. */
  static final String OPENED = "job-opened";

  private static final Comparator<BookLine> EARLIEST =
      Comparator.comparing(BookLine::at)
          .thenComparing(BookLine::device)
          .thenComparing(BookLine::number);

  private EarlyClocks() {}

  /** The entry with which a job begins; the drawer's book has none. */
  static Optional<BookLine> opening(Collection<BookLine> lines) {
    return lines.stream().filter(line -> line.kind().equals(OPENED)).min(EARLIEST);
  }

  /** What to tell of each such device; the one that began the job has its numbers to go by. */
  static List<String> told(Collection<BookLine> lines) {
    Map<String, Integer> early = new TreeMap<>();
    Optional<BookLine> opening = opening(lines);
    for (BookLine line : lines) {
      if (opening.map(first -> isEarly(line, first)).orElse(false)) {
        early.merge(line.device(), 1, Integer::sum);
      }
    }
    Instant begun = opening.map(BookLine::at).orElse(Instant.EPOCH);
    return early.entrySet().stream()
        .map(each -> told(each.getKey(), each.getValue(), begun))
        .toList();
  }

  /** The same as problems of a book. */
  static List<Problem> problems(BookFile book) {
    return told(book.lines()).stream()
        .map(
            sentence ->
                new Problem(
                    book.path().toString(),
                    0,
                    0,
                    sentence,
                    "All are kept and used. See whether the plan is the one you mean: of two, the"
                        + " later in the book is followed."))
        .toList();
  }

  private static boolean isEarly(BookLine line, BookLine opening) {
    return !line.device().equals(opening.device()) && line.at().isBefore(opening.at());
  }

  private static String told(String device, int count, Instant begun) {
    return "The clock of "
        + EntryId.shown(device)
        + " stood before the job was begun, at "
        + begun
        + ", when it made "
        + (count == 1 ? "1 entry" : count + " entries")
        + ".";
  }
}
