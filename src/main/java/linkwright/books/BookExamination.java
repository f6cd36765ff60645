package linkwright.books;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.Examination.Examined;
import linkwright.disk.DiskTrouble;
import linkwright.files.Home;
import linkwright.files.yaml.ProblemList;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/** How the books of a home are: whether anything is missing, and whether they can be written. */
final class BookExamination {
  private static final int YEAR_DAYS = 365;

  private final List<Problem> problems = new ArrayList<>();
  private int entries;
  private Instant latest = Instant.EPOCH;

  private BookExamination() {}

  static List<Examined> of(Home home, Instant now) {
    return new BookExamination().look(home, now);
  }

  private List<Examined> look(Home home, Instant now) {
    List<Path> books = home.books(problems);
    books.forEach(this::look);
    boolean drawer = Files.exists(home.drawer(), LinkOption.NOFOLLOW_LINKS);
    if (drawer) {
      home.leadsOut(home.drawer())
          .ifPresentOrElse(why -> wrong(home.drawer(), why), () -> look(home.drawer()));
    }
    problems.addAll(GoneBooks.of(home));
    String what =
        count(books.size(), "book")
            + (drawer ? " and the drawer's, " : ", ")
            + (entries == 1 ? "1 entry" : entries + " entries");
    List<Examined> findings = new ArrayList<>();
    findings.add(
        problems.isEmpty()
            ? new Examined(true, what + ": nothing is missing, moved or changed.")
            : new Examined(false, what + ". " + count(found(), "problem") + ":"));
    ProblemList.first("", problems)
        .forEach(problem -> findings.add(new Examined(false, "  " + problem.sentence())));
    findings.add(clock(now));
    return findings;
  }

  private int found() {
    return problems.stream().mapToInt(Problem::stands).sum();
  }

  private static String count(int many, String what) {
    return many + " " + what + (many == 1 ? "" : "s");
  }

  private void look(Path path) {
    Read<BookFile> read = BookFile.look(path);
    read.problem().ifPresent(why -> wrong(path, why));
    read.found()
        .ifPresent(
            book -> {
              book.headless().ifPresent(problems::add);
              problems.addAll(book.problems());
              problems.addAll(book.unknownKinds());
              whyOnlyToLook(path).ifPresent(why -> wrong(path, why));
              entries += book.lines().size();
              book.lines().stream()
                  .map(BookLine::at)
                  .filter(at -> at.isAfter(latest))
                  .forEach(at -> latest = at);
            });
  }

  /** Told without taking the lock: a program may be at work in the book, and rightly so. */
  private static Optional<String> whyOnlyToLook(Path path) {
    Path lock = BookLock.beside(path, ".lock");
    if (Files.exists(lock, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.of(DiskTrouble.noFile(lock));
    }
    return Files.isWritable(path)
        ? Optional.empty()
        : Optional.of("It can only be looked at: its permissions, or its disk, let nobody write.");
  }

  private void wrong(Path path, String why) {
    problems.add(new Problem(path.toString(), 0, 0, why, ""));
  }

  private Examined clock(Instant now) {
    Duration ahead = Duration.between(now, latest);
    return ahead.toMinutes() < 1
        ? new Examined(true, "The clock is not behind the last entry.")
        : new Examined(
            false,
            "The clock is "
                + span(ahead)
                + " behind the last entry, of "
                + latest
                + ": was it set back?");
  }

  /** In the unit that a jeweller would say it in. */
  private static String span(Duration ahead) {
    if (ahead.toHours() < 2) {
      return ahead.toMinutes() + " min";
    }
    if (ahead.toDays() < 2) {
      return ahead.toHours() + " hours";
    }
    return ahead.toDays() < 2 * YEAR_DAYS
        ? ahead.toDays() + " days"
        : ahead.toDays() / YEAR_DAYS + " years";
  }
}
