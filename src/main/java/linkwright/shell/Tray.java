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
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.books.GoneBooks;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.kernel.drafting.DraftWords;
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
import linkwright.job.JobState;
import linkwright.job.Timers;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.entering.EnteringDrafts;
import linkwright.shell.remembered.RememberedHands;
import linkwright.shell.remembered.TaughtFields.Came;
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

  /** What takes longer is reckoned while nobody presses a key, ns. */
  private static final long AT_ONCE_NANOS = 200_000_000;

  /** So many at a time then: a key that comes meanwhile waits for no more. */
  private static final int BETWEEN_KEYS = 4;

  /** A book that was read: its entries, or why it could not be. */
  private record Opened(List<Entry> entries, TrayBook named) {}

  /** A book, and what it came to; not opened where that was remembered and is all that is asked. */
  private record Looked(String slug, Optional<Opened> opened, Optional<Came> came) {
    TrayBook named() {
      return opened.orElseThrow().named();
    }

    Optional<TaughtJob> taught() {
      return came.map(Came::taught);
    }
  }

  private final Home home;
  private final DraftStore drafts;
  private final RememberedHands remembered;
  private Map<Seen, Looked> read = Map.of();
  private Map<Seen, TrayBook> known = Map.of();
  private List<Seen> listed = List.of();
  private List<Seen> behind = List.of();
  private ClockNotes notes = ClockNotes.NONE;
  private Hands hands = Hands.NONE;
  private Hands reckonedWith = Hands.NONE;
  private OwnBench reckonedAt = OwnBench.NONE;
  private int unread;
  private List<String> problems = new ArrayList<>();

  Tray(Home home) {
    this(home, RememberedHands.nothing(home));
  }

  Tray(Home home, RememberedHands remembered) {
    this.home = home;
    this.remembered = remembered;
    this.drafts = new DraftStore(home.drafts());
  }

  /** A timer that waits here runs as it does at the bench, whatever the clock was set to. */
  void noting(ClockNotes clock) {
    notes = clock;
  }

  /**
   * The jobs in the user's folder, open ones first, the one last worked on before the others. Those
   * changed last are read first: they are there when the reading is broken off. All are read before
   * one is reckoned, for what the others taught bears on each. Where it may be done later, what
   * takes long is left for {@link #more}: until then a job stands as it did, or by its name alone.
   */
  List<TrayJob> jobs(Handbook handbook, Instant now, ReadingProgress patience) {
    List<Seen> books = learnt(handbook, patience, true);
    boolean same = reckonedWith == hands && reckonedAt.equals(handbook.own());
    reckonedWith = hands;
    reckonedAt = handbook.own();
    Map<Seen, TrayBook> before = known;
    known = new HashMap<>();
    books.stream()
        .filter(book -> before.containsKey(book) && book.changed().isPresent())
        .forEach(book -> known.put(book, before.get(book)));
    // A closed job stands as it stood, whatever was taught since.
    behind =
        books.stream()
            .filter(book -> !known.containsKey(book) || (!same && !known.get(book).job().closed()))
            .toList();
    long until = System.nanoTime() + AT_ONCE_NANOS;
    boolean goOn = true;
    while (goOn && !behind.isEmpty()) {
      goOn =
          patience.goOn(books.size() - behind.size(), books.size())
              && !(patience.later() && System.nanoTime() > until);
      if (goOn) {
        reckon(AT_ONCE, handbook);
      }
    }
    List<Seen> left = patience.later() ? List.of() : behind;
    unread += left.size();
    listed = books.stream().filter(book -> !left.contains(book)).toList();
    behind = patience.later() ? behind : List.of();
    return listed(now);
  }

  /** Whether the books are others than those that were read last, or were changed since. */
  boolean isOld() {
    return unread == 0
        && !home.books().stream().map(Seen::of).collect(Collectors.toSet()).equals(read.keySet());
  }

  /** Whether some jobs are still to be reckoned. */
  boolean isBehind() {
    return !behind.isEmpty();
  }

  /** Some more of what was left for later, and the jobs as they stand then. */
  List<TrayJob> more(Handbook handbook, Instant now) {
    reckon(BETWEEN_KEYS, handbook);
    return listed(now);
  }

  /** Each book is worked out by itself: that is shared out between the processors. */
  private void reckon(int count, Handbook handbook) {
    Handbook taught = handbook.with(hands);
    List<Seen> some = behind.subList(0, Math.min(count, behind.size()));
    List<TrayBook> standings =
        some.parallelStream().map(book -> standing(read.get(book), taught)).toList();
    for (int i = 0; i < some.size(); i++) {
      known.put(some.get(i), standings.get(i));
    }
    behind = behind.subList(some.size(), behind.size());
  }

  private List<TrayJob> listed(Instant now) {
    return listed.stream()
        .map(book -> known.getOrDefault(book, read.get(book).named()).at(now, notes.moves(now)))
        .map(job -> job.alsoWaiting(DraftWords.badge(EnteringDrafts.waiting(drafts, job.slug()))))
        .sorted(
            Comparator.comparing(TrayJob::closed)
                .thenComparing(TrayJob::lastEntry, Comparator.reverseOrder()))
        .toList();
  }

  /** What the books taught that are there now. */
  Hands hands(Handbook handbook, ReadingProgress patience) {
    learnt(handbook, patience, true);
    return hands;
  }

  /** The same for who asks no more: a book that taught and took what is remembered stays shut. */
  Hands handsAlone(Handbook handbook) {
    learnt(handbook, ReadingProgress.ENDLESS, false);
    remembered.save();
    return hands;
  }

  /** Reads what changed, and what the books taught then. */
  private List<Seen> learnt(Handbook handbook, ReadingProgress patience, boolean opened) {
    List<Seen> books = looked(handbook, patience, opened);
    HandsFile leftOut = HandsFile.load(home);
    leftOut.problems().forEach(problem -> problems.add(problem.sentence()));
    // Compared in one order: books are read by the age of their files.
    Hands fresh =
        Hands.of(
            books.stream().flatMap(book -> read.get(book).taught().stream()).toList(),
            leftOut.leftOut());
    if (!fresh.jobs().equals(hands.jobs()) || !fresh.leftOut().equals(hands.leftOut())) {
      hands = fresh;
    }
    return books;
  }

  /** Reads what changed since it was read last; those changed last first. */
  private List<Seen> looked(Handbook handbook, ReadingProgress patience, boolean opened) {
    List<Problem> told = new ArrayList<>();
    List<Seen> books = new ArrayList<>(home.books(told).stream().map(Seen::of).toList());
    told.addAll(GoneBooks.ofJobs(home));
    problems = new ArrayList<>(told.stream().map(Problem::sentence).toList());
    books.sort(Comparator.comparing(Seen::age).reversed());
    Map<Seen, Looked> now = new HashMap<>();
    List<Seen> done = new ArrayList<>();
    while (done.size() < books.size() && patience.goOn(done.size(), books.size())) {
      List<Seen> some = books.subList(done.size(), Math.min(books.size(), done.size() + AT_ONCE));
      List<Looked> looked =
          some.parallelStream().map(book -> look(book, handbook, opened)).toList();
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
    for (Looked book : read.values()) {
      met = met.and(book.named().met());
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
        read.values().stream()
            .flatMap(looked -> looked.came().stream())
            .flatMap(came -> came.takings().stream())
            .toList();
    List<JobMetal> works =
        read.values().stream()
            .flatMap(looked -> looked.came().stream())
            .flatMap(came -> came.metal().stream())
            .toList();
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

  /** Which books of those that were read last say nothing, and why, each in a sentence. */
  List<String> unreadable() {
    return read.values().stream()
        .filter(looked -> looked.taught().isEmpty())
        .map(looked -> "The job “" + looked.slug() + "” " + looked.named().job().stands())
        .sorted()
        .toList();
  }

  private Looked look(Seen book, Handbook handbook, boolean opened) {
    Looked before = read.get(book);
    if (before != null && book.changed().isPresent() && (before.opened().isPresent() || !opened)) {
      return before;
    }
    String slug = TrayReading.slug(book.path());
    Optional<Came> came = opened ? Optional.empty() : remembered.of(book.path(), slug, handbook);
    return came.isPresent()
        ? new Looked(slug, Optional.empty(), came)
        : read(slug, book, handbook, opened);
  }

  private Looked read(String slug, Seen book, Handbook handbook, boolean opened) {
    Read<BookFile> looked = BookFile.look(book.path());
    if (looked instanceof Read.Bad<BookFile> bad) {
      String stands = "cannot be read: " + bad.sentence();
      Instant age = book.age().toInstant();
      TrayBook named =
          new TrayBook(
              new TrayJob(slug, slug, stands, List.of(), age, false),
              Timers.NONE,
              CautionsMet.NONE);
      return new Looked(slug, Optional.of(new Opened(List.of(), named)), Optional.empty());
    }
    List<Entry> entries = EntryLines.entries(looked.orThrow().lines());
    JobState state = JobState.replay(entries, handbook.stages());
    Came came =
        new Came(
            handbook.taught(slug, entries, state),
            Taking.in(slug, entries),
            JobMetal.in(slug, entries));
    if (!opened) {
      remembered.remember(book.path(), came, handbook);
    }
    // What nobody will ask for is not kept: hundreds of books fill the memory.
    return new Looked(
        slug,
        opened
            ? Optional.of(new Opened(entries, TrayWords.named(slug, entries, state)))
            : Optional.empty(),
        Optional.of(came));
  }

  private static TrayBook standing(Looked looked, Handbook handbook) {
    List<Entry> entries = looked.opened().orElseThrow().entries();
    return looked.taught().isEmpty()
        ? looked.named()
        : TrayWords.standing(looked.slug(), entries, handbook.forJob(looked.slug(), entries));
  }
}
