package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.TrayBook;
import linkwright.coach.tray.TrayWords;
import linkwright.files.Home;
import linkwright.job.CautionsMet;
import linkwright.job.Timers;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;

/**
 * Reads what lies in the tray; nothing is written and no book is held. A book whose file has
 * neither a new time nor another size since it was read is not read again.
 */
final class Tray {
  /** A book's file as it lay on the disk; what could not be looked at is read every time. */
  private record Seen(Path path, Optional<FileTime> changed, long bytes) {
    static Seen of(Path path) {
      try {
        BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
        return new Seen(path, Optional.of(now.lastModifiedTime()), now.size());
      } catch (IOException gone) {
        return new Seen(path, Optional.empty(), 0);
      }
    }

    FileTime age() {
      return changed.orElse(FileTime.fromMillis(0));
    }
  }

  /** Few enough that the user is asked often, many enough to keep all processors at work. */
  private static final int AT_ONCE = 8;

  private final Home home;
  private Map<Seen, TrayBook> known = Map.of();
  private int unread;
  private List<String> problems = List.of();

  Tray(Home home) {
    this.home = home;
  }

  /**
   * The jobs in the user's folder, open ones first, the one last worked on before the others. Those
   * changed last are read first: they are there when the reading is broken off.
   */
  List<TrayJob> jobs(Handbook handbook, Instant now, Patience patience) {
    List<Problem> told = new ArrayList<>();
    List<Seen> books = new ArrayList<>(home.books(told).stream().map(Seen::of).toList());
    problems = told.stream().map(Problem::sentence).toList();
    books.sort(Comparator.comparing(Seen::age).reversed());
    Map<Seen, TrayBook> read = new HashMap<>();
    List<TrayJob> found = new ArrayList<>();
    while (found.size() < books.size() && patience.goOn(found.size(), books.size())) {
      List<Seen> some = books.subList(found.size(), Math.min(books.size(), found.size() + AT_ONCE));
      // Each book is worked out by itself: that is shared out between the processors.
      List<TrayBook> standings =
          some.parallelStream().map(book -> standing(book, handbook)).toList();
      for (int i = 0; i < some.size(); i++) {
        read.put(some.get(i), standings.get(i));
        found.add(standings.get(i).at(now));
      }
    }
    unread = books.size() - found.size();
    known = Map.copyOf(read);
    found.sort(
        Comparator.comparing(TrayJob::closed)
            .thenComparing(TrayJob::lastEntry, Comparator.reverseOrder()));
    return List.copyOf(found);
  }

  /** The cautions that were met in any of the books, as far as they were read. */
  CautionsMet met() {
    CautionsMet met = CautionsMet.NONE;
    for (TrayBook book : known.values()) {
      met = met.and(book.met());
    }
    return met;
  }

  /** What kept books from being listed when the tray was read last, in sentences. */
  List<String> problems() {
    return problems;
  }

  /** How many books were left out when the last reading was broken off. */
  int unread() {
    return unread;
  }

  private TrayBook standing(Seen book, Handbook handbook) {
    TrayBook before = known.get(book);
    return before != null && book.changed().isPresent() ? before : read(book, handbook);
  }

  private static TrayBook read(Seen book, Handbook handbook) {
    String slug = TrayReading.slug(book.path());
    Read<BookFile> looked = BookFile.look(book.path());
    if (looked instanceof Read.Bad<BookFile> bad) {
      String stands = "cannot be read: " + bad.sentence();
      Instant age = book.age().toInstant();
      return new TrayBook(
          new TrayJob(slug, slug, stands, List.of(), age, false), Timers.NONE, CautionsMet.NONE);
    }
    return TrayWords.standing(slug, EntryLines.entries(looked.orThrow().lines()), handbook);
  }
}
