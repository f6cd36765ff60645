package linkwright.shell.remembered;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.CodeSource;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.books.BookLine;
import linkwright.books.EntryLines;
import linkwright.books.SoundLines;
import linkwright.disk.Disk;
import linkwright.files.Home;
import linkwright.job.Fact;
import linkwright.standing.Handbook;

/**
 * What each book taught, remembered in a file of the user's folder so that a command need not read
 * all books again. It is never the truth: what it says holds only while program, data files and all
 * bytes of the book are those it was reckoned from, and without it everything is reckoned anew.
 */
public final class RememberedHands {
  private static final String NAME = "hands.known";
  private static final String MADE_BY = "made-by";
  private static final String BOOK = "book";
  private static final String BYTES = "bytes";
  private static final String CHECK = "check";

  /** Longer books are read each time. */
  private static final long LONGEST = 16 << 20;

  /** The first entry of a book, which names its job, ends before this. */
  private static final int HEAD = 4096;

  /** The user's own data are looked for so deep, and in so many files. */
  private static final int DEEP = 4;

  private static final int MOST = 10_000;

  /** A book's file as it lies there. */
  private record Bytes(long length, String check, String jobName) {}

  private final Home home;
  private final Optional<String> madeBy;
  private final Map<String, BookLine> known;
  private final Map<String, BookLine> kept = new HashMap<>();
  private boolean learnt;

  private RememberedHands(Home home, Optional<String> madeBy, Map<String, BookLine> known) {
    this.home = home;
    this.madeBy = madeBy;
    this.known = known;
  }

  /** How many books' teaching is remembered in a folder, in a sentence. */
  public static String told(Home home) {
    Path file = home.folder().resolve(NAME);
    try {
      boolean there = Files.isRegularFile(file) && Files.size(file) <= LONGEST;
      int books = there ? SoundLines.in(Files.readAllBytes(file)).size() - 1 : 0;
      return books < 1
          ? "What the books taught: none of it is remembered, it is reckoned from them."
          : "What the books taught: remembered of "
              + books
              + " in "
              + NAME
              + ", which may be deleted; it is reckoned anew then.";
    } catch (IOException unreadable) {
      return "What the books taught: " + NAME + " cannot be read, all books are read each time.";
    }
  }

  /** Nothing is remembered, and nothing will be. */
  public static RememberedHands nothing(Home home) {
    return new RememberedHands(home, Optional.empty(), Map.of());
  }

  /**
   * What is remembered in a folder.
   *
   * @param madeBy what tells this program and its data from others; empty where nothing does, and
   *     nothing is remembered then
   */
  public static RememberedHands of(Home home, Optional<String> madeBy) {
    Map<String, BookLine> known = new LinkedHashMap<>();
    Path file = home.folder().resolve(NAME);
    try {
      if (madeBy.isPresent() && Files.isRegularFile(file) && Files.size(file) <= LONGEST) {
        List<BookLine> lines = SoundLines.in(Files.readAllBytes(file));
        if (!lines.isEmpty() && lines.get(0).fields().equals(Map.of(MADE_BY, madeBy.get()))) {
          lines.stream()
              .skip(1)
              .forEach(line -> known.put(String.valueOf(line.fields().get(BOOK)), line));
        }
      }
    } catch (IOException unreadable) {
      known.clear();
    }
    return new RememberedHands(home, madeBy, known);
  }

  /** What is remembered of a book as it lies there; empty where it has to be read. */
  public Optional<TaughtFields.Came> of(Path book, String slug, Handbook handbook) {
    BookLine line = known.get(slug);
    if (line == null) {
      return Optional.empty();
    }
    Optional<TaughtFields.Came> came =
        bytes(book)
            .filter(
                now -> line.fields().get(BYTES) instanceof Long length && length == now.length())
            .filter(now -> now.check().equals(line.fields().get(CHECK)))
            .flatMap(now -> TaughtFields.came(line, slug, now.jobName(), handbook));
    if (came.isPresent()) {
      keep(slug, line);
    }
    return came;
  }

  /** Remembers what a book came to that was read. */
  public void remember(Path book, TaughtFields.Came came, Handbook handbook) {
    if (madeBy.isEmpty()) {
      return;
    }
    String slug = came.taught().slug();
    bytes(book)
        .filter(now -> now.jobName().equals(came.taught().name()))
        .flatMap(
            now ->
                TaughtFields.line(
                    1, came, Map.of(BOOK, slug, BYTES, now.length(), CHECK, now.check()), handbook))
        .ifPresent(
            line -> {
              keep(slug, line);
              learnt();
            });
  }

  private synchronized void keep(String slug, BookLine line) {
    kept.put(slug, line);
  }

  private synchronized void learnt() {
    learnt = true;
  }

  /** Writes what was learnt, if any was; where it cannot be, all is read once more next time. */
  public synchronized void save() {
    if (madeBy.isEmpty() || !learnt) {
      return;
    }
    List<BookLine> lines = new ArrayList<>();
    lines.add(
        new BookLine(1, Instant.EPOCH, "hands", MADE_BY, Map.of(MADE_BY, madeBy.orElseThrow())));
    kept.keySet().stream().sorted().map(kept::get).forEach(lines::add);
    try {
      Disk.replaceUnsynced(home.folder().resolve(NAME), SoundLines.written(lines));
      learnt = false;
    } catch (IOException readAgain) {
      learnt = false;
    }
  }

  /** The file's length and check, and its job's name; empty where it cannot be read at once. */
  private static Optional<Bytes> bytes(Path book) {
    try {
      if (!Files.isRegularFile(book) || Files.size(book) > LONGEST) {
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(book);
      return SoundLines.in(Arrays.copyOf(bytes, Math.min(bytes.length, HEAD))).stream()
          .map(line -> EntryLines.entry(line).fact())
          .filter(Fact.JobOpened.class::isInstance)
          .findFirst()
          .map(
              opened ->
                  new Bytes(
                      bytes.length, SoundLines.check(bytes), ((Fact.JobOpened) opened).name()));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  /**
   * What tells this program and the user's own data from others: where it lies, how large and how
   * old its files are. Empty for a program that is no one file: nobody could see it change.
   */
  public static Optional<String> madeBy(Home home) {
    try {
      CodeSource source = RememberedHands.class.getProtectionDomain().getCodeSource();
      if (source == null) {
        return Optional.empty();
      }
      Path program = Path.of(source.getLocation().toURI());
      if (!Files.isRegularFile(program)) {
        return Optional.empty();
      }
      StringBuilder all = new StringBuilder(seen(program));
      for (Path own : home.dataFolders()) {
        if (Files.isDirectory(own)) {
          try (Stream<Path> files = Files.walk(own, DEEP).limit(MOST)) {
            for (Path file : files.sorted().toList()) {
              all.append(seen(file));
            }
          }
        }
      }
      return Optional.of(SoundLines.check(all.toString().getBytes(StandardCharsets.UTF_8)));
    } catch (IOException
        | UncheckedIOException
        | URISyntaxException
        | IllegalArgumentException no) {
      return Optional.empty();
    }
  }

  private static String seen(Path file) throws IOException {
    BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
    return file + " " + now.size() + " " + now.lastModifiedTime() + "\n";
  }
}
