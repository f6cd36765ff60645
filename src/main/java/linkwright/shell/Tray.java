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
import linkwright.books.GoneBooks;
import linkwright.coach.kernel.DraftWords;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.TrayBook;
import linkwright.coach.tray.TrayWords;
import linkwright.drawer.Drawer;
import linkwright.drawer.JobMetal;
import linkwright.drawer.Taking;
import linkwright.files.DraftStore;
import linkwright.files.HandsFile;
import linkwright.files.Home;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.CautionsMet;
import linkwright.job.Entry;
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

  /** A book as it was read: its entries and what it taught, or why it could not be read. */
  private record Looked(
      String slug,
      List<Entry> entries,
      Optional<TaughtJob> taught,
      List<Taking> takings,
      Optional<JobMetal> metal,
      String why) {}

  private final Home home;
  private final DraftStore drafts;
  private Map<Seen, Looked> read = Map.of();
  private Map<Seen, TrayBook> known = Map.of();
  private Hands hands = Hands.NONE;
  private int unread;
  private List<String> problems = new ArrayList<>();

  Tray(Home home) {
    this.home = home;
    this.drafts = new DraftStore(home.drafts());
  }

  /**
   * The jobs in the user's folder, open ones first, the one last worked on before the others. Those
   * changed last are read first: they are there when the reading is broken off. All are read before
   * one is reckoned, for what the others taught bears on each.
   */
  List<TrayJob> jobs(Handbook handbook, Instant now, Patience patience) {
    List<Seen> books = looked(handbook, patience);
    List<TaughtJob> taught =
        books.stream().flatMap(book -> read.get(book).taught().stream()).toList();
    HandsFile leftOut = HandsFile.load(home);
    leftOut.problems().forEach(problem -> problems.add(problem.sentence()));
    // Compared in one order: books are read by the age of their files.
    Hands fresh = Hands.of(taught, leftOut.leftOut());
    boolean same = fresh.jobs().equals(hands.jobs()) && fresh.leftOut().equals(hands.leftOut());
    if (!same) {
      hands = fresh;
    }
    Handbook taughtBook = handbook.with(hands);
    Map<Seen, TrayBook> reckoned = new HashMap<>();
    List<TrayJob> found = new ArrayList<>();
    while (found.size() < books.size() && patience.goOn(found.size(), books.size())) {
      List<Seen> some = books.subList(found.size(), Math.min(books.size(), found.size() + AT_ONCE));
      // Each book is worked out by itself: that is shared out between the processors.
      List<TrayBook> standings =
          some.parallelStream().map(book -> standing(book, same, taughtBook)).toList();
      for (int i = 0; i < some.size(); i++) {
        reckoned.put(some.get(i), standings.get(i));
        TrayJob job = standings.get(i).at(now);
        found.add(job.alsoWaiting(DraftWords.badge(drafts.of(job.slug()))));
      }
    }
    unread += books.size() - found.size();
    known = Map.copyOf(reckoned);
    found.sort(
        Comparator.comparing(TrayJob::closed)
            .thenComparing(TrayJob::lastEntry, Comparator.reverseOrder()));
    return List.copyOf(found);
  }

  /** What the books taught that were read last. */
  Hands hands(Handbook handbook, Patience patience) {
    List<Seen> books = looked(handbook, patience);
    return Hands.of(
        books.stream().flatMap(book -> read.get(book).taught().stream()).toList(),
        HandsFile.load(home).leftOut());
  }

  /** Reads what changed since it was read last; those changed last first. */
  private List<Seen> looked(Handbook handbook, Patience patience) {
    List<Problem> told = new ArrayList<>();
    List<Seen> books = new ArrayList<>(home.books(told).stream().map(Seen::of).toList());
    told.addAll(GoneBooks.ofJobs(home));
    problems = new ArrayList<>(told.stream().map(Problem::sentence).toList());
    books.sort(Comparator.comparing(Seen::age).reversed());
    Map<Seen, Looked> now = new HashMap<>();
    List<Seen> done = new ArrayList<>();
    while (done.size() < books.size() && patience.goOn(done.size(), books.size())) {
      List<Seen> some = books.subList(done.size(), Math.min(books.size(), done.size() + AT_ONCE));
      List<Looked> looked = some.parallelStream().map(book -> look(book, handbook)).toList();
      for (int i = 0; i < some.size(); i++) {
        now.put(some.get(i), looked.get(i));
      }
      done.addAll(some);
    }
    unread = books.size() - done.size();
    read = Map.copyOf(now);
    return done;
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
    return List.copyOf(problems);
  }

  /** What lies in the drawer by its own book and by the books that were read last. */
  Drawer drawer(Handbook handbook) {
    List<Taking> takings =
        read.values().stream().flatMap(looked -> looked.takings().stream()).toList();
    List<JobMetal> works =
        read.values().stream().flatMap(looked -> looked.metal().stream()).toList();
    return Drawer.of(DrawerBook.entries(home), takings, works, handbook.reference());
  }

  /** What the books taught, as they were read for the last tray. */
  Hands hands() {
    return hands;
  }

  /** How many books were left out when the last reading was broken off. */
  int unread() {
    return unread;
  }

  private Looked look(Seen book, Handbook handbook) {
    Looked before = read.get(book);
    return before != null && book.changed().isPresent() ? before : read(book, handbook);
  }

  private static Looked read(Seen book, Handbook handbook) {
    String slug = TrayReading.slug(book.path());
    Read<BookFile> looked = BookFile.look(book.path());
    if (looked instanceof Read.Bad<BookFile> bad) {
      return new Looked(
          slug, List.of(), Optional.empty(), List.of(), Optional.empty(), bad.sentence());
    }
    List<Entry> entries = EntryLines.entries(looked.orThrow().lines());
    return new Looked(
        slug,
        entries,
        Optional.of(handbook.taught(slug, entries)),
        Taking.in(slug, entries),
        JobMetal.in(slug, entries),
        "");
  }

  /** A closed job stands as it stood, whatever was taught since. */
  private TrayBook standing(Seen book, boolean taughtSame, Handbook handbook) {
    TrayBook before = known.get(book);
    boolean stays = before != null && book.changed().isPresent();
    return stays && (taughtSame || before.job().closed())
        ? before
        : standing(read.get(book), book, handbook);
  }

  private static TrayBook standing(Looked looked, Seen book, Handbook handbook) {
    if (looked.taught().isEmpty()) {
      String stands = "cannot be read: " + looked.why();
      Instant age = book.age().toInstant();
      return new TrayBook(
          new TrayJob(looked.slug(), looked.slug(), stands, List.of(), age, false),
          Timers.NONE,
          CautionsMet.NONE);
    }
    return TrayWords.standing(
        looked.slug(), looked.entries(), handbook.forJob(looked.slug(), looked.entries()));
  }
}
