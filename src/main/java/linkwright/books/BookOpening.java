package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.disk.FailPoint;
import linkwright.files.yaml.ProblemList;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.text.Slug;

/**
 * How a book was opened: with a lock and a writer, or only to look, and why.
 *
 * @param lock held while the book is written
 * @param writer the end of the file, if it may be written
 * @param whyReadOnly a sentence, if it may not
 * @param shown what was remembered as shown when it was opened
 * @param problems what was met on opening
 */
record BookOpening(
    Optional<BookLock> lock,
    Optional<BookWriter> writer,
    Optional<String> whyReadOnly,
    LastShown shown,
    List<Problem> problems) {
  /** Far beyond any job: a file that long is not a book, and reading it would fill the memory. */
  private static final long LONGEST_BYTES = 256L << 20;

  /** A header and some remarks; a longer book has entries. */
  private static final int LONGEST_EMPTY_BYTES = 4096;

  private static final String ANOTHER_WRITES =
      "Another Linkwright is writing this job now: it is open here to look. Close it there to go on"
          + " here.";

  private static final byte[] HEADER = (BookText.HEADER + "\n").getBytes(StandardCharsets.UTF_8);

  private static final DateTimeFormatter TORN_TIME =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  static Read<Path> create(Path folder, String jobName) {
    Path path = folder;
    try {
      Disk.folders(folder);
      Set<String> taken = namesIn(folder);
      while (true) {
        path = folder.resolve(Slug.of(jobName, taken::contains) + ".yaml");
        try {
          Disk.create(path, HEADER);
          return Read.good(path);
        } catch (FileAlreadyExistsException anotherWasQuicker) {
          taken.addAll(namesIn(folder));
        }
      }
    } catch (IOException trouble) {
      return Read.bad(DiskTrouble.writing(path, trouble));
    }
  }

  /** Makes a book of that very name, if nothing has it yet. */
  static Read<Path> make(Path path) {
    try {
      if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        Disk.folders(path.getParent());
        Disk.create(path, HEADER);
      }
      return Read.good(path);
    } catch (FileAlreadyExistsException anotherWasQuicker) {
      return Read.good(path);
    } catch (IOException trouble) {
      return Read.bad(DiskTrouble.writing(path, trouble));
    }
  }

  /** What the files of a folder are called up to the first dot, in small letters. */
  private static Set<String> namesIn(Path folder) throws IOException {
    Set<String> names = new HashSet<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(
          file -> {
            String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
            int dot = name.indexOf('.');
            names.add(dot < 0 ? name : name.substring(0, dot));
          });
    }
    return names;
  }

  /** Opens without a lock, changing nothing; the reason is what an attempt to add is told. */
  static Read<BookFile> toLook(Path path, String device, String reason) {
    return read(path)
        .flatMap(
            bytes -> {
              BookScan scan = BookScan.of(bytes);
              return known(bytes, BookMarks.whyNone(path, bytes, scan))
                  .map(book -> looking(path, device, reason, book, scan));
            });
  }

  private static Read<byte[]> known(byte[] bytes, Optional<String> whyNoBook) {
    return whyNoBook.map(Read::<byte[]>bad).orElseGet(() -> Read.good(bytes));
  }

  /** That a book is of a format that is not known here; empty for all others. */
  static Optional<String> newer(Path path) {
    int format = read(path).map(BookMarks::format).orElse(BookText.FORMAT);
    return format > BookText.FORMAT
        ? Optional.of(
            "A newer Linkwright wrote this book, in format "
                + format
                + ": what is known of it is shown, and nothing is written to it here.")
        : Optional.empty();
  }

  /** That a book's first line is gone or changed though entries stand in it, or stands twice. */
  static Optional<Problem> headless(BookFile book) {
    return noTitle(book).or(() -> headedTwice(book));
  }

  private static Optional<Problem> noTitle(BookFile book) {
    return read(book.path())
        .found()
        .filter(bytes -> !book.rows().isEmpty() && !BookMarks.beginsWithTitle(bytes))
        .map(
            bytes ->
                new Problem(
                    book.path().toString(),
                    1,
                    1,
                    "The line that a book begins with is missing or was changed.",
                    "Put this in front of the first entry: "
                        + BookMarks.TITLE
                        + ", format "
                        + BookText.FORMAT
                        + ". All entries are read without it."));
  }

  /** That a book's first line stands in it more than once, as where two were copied together. */
  private static Optional<Problem> headedTwice(BookFile book) {
    byte[] bytes = read(book.path()).orElse(new byte[0]);
    List<String> lines = new String(bytes, StandardCharsets.UTF_8).lines().toList();
    int first = lines.indexOf(BookText.HEADER);
    int last = lines.lastIndexOf(BookText.HEADER);
    return first == last
        ? Optional.empty()
        : Optional.of(
            new Problem(
                book.path().toString(),
                last + 1,
                1,
                "The line that a book begins with stands a second time.",
                "Take this one away, and look whether what follows it belongs to this job. All"
                    + " entries are read as it is."));
  }

  /** Why nothing goes into a book that was emptied after entries of it were shown as done. */
  static Optional<String> emptied(Path path) {
    try {
      return Files.isRegularFile(path) && Files.size(path) < LONGEST_EMPTY_BYTES
          ? read(path)
              .found()
              .filter(bytes -> BookScan.of(bytes).rows().isEmpty())
              .flatMap(nothing -> LastShown.of(path).whyNotOn())
          : Optional.empty();
    } catch (IOException unread) {
      // Opening it meets the same and says so.
      return Optional.empty();
    }
  }

  /** Whether the program that wrote the book has gone since it was opened to look. */
  static boolean letGo(Path path, Optional<String> whyReadOnly) {
    return whyReadOnly.equals(Optional.of(ANOTHER_WRITES)) && isFree(path).orElse(false);
  }

  /** Whether nobody writes it now; empty where that cannot be known. */
  static Optional<Boolean> isFree(Path path) {
    try {
      Optional<BookLock> lock = BookLock.take(path, BookLock.LOCK_FILE);
      lock.ifPresent(BookLock::release);
      return Optional.of(lock.isPresent());
    } catch (IOException notNow) {
      return Optional.empty();
    }
  }

  private static Path withoutLink(Path path) {
    try {
      return Files.isSymbolicLink(path) ? path.toRealPath() : path;
    } catch (IOException leadsNowhere) {
      return path;
    }
  }

  private static BookFile looking(
      Path path, String device, String reason, byte[] bytes, BookScan scan) {
    List<Problem> problems = new ArrayList<>();
    if (scan.wholeBytes() < bytes.length) {
      problems.add(torn(path, bytes, scan, "It is not used, and left as it is for now."));
    }
    LastShown shown = LastShown.of(path);
    problems.addAll(shown.problems(path.toString(), scan.rows(), scan.lines()));
    return new BookFile(
        path,
        device,
        scan,
        BookMarks.format(bytes) >= BookText.FORMAT,
        new BookOpening(Optional.empty(), Optional.empty(), Optional.of(reason), shown, problems));
  }

  private static Read<byte[]> read(Path path) {
    try {
      if (Files.isDirectory(path)) {
        return Read.bad(path + " is a folder, not a job book.");
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        return Read.bad(path + " is no job book: it is not an ordinary file.");
      }
      if (Files.size(path) > LONGEST_BYTES) {
        return Read.bad(path + " is larger than any job book: is it the right file?");
      }
      return Read.good(Files.readAllBytes(path));
    } catch (IOException trouble) {
      return Read.bad(DiskTrouble.reading(path, trouble));
    }
  }

  /**
   * Opens to write. Not even the lock is made beside a file before it is known to be a book, and
   * what is opened in the end is the file that was looked at, not what a link leads to by then.
   */
  static Read<BookFile> toWrite(
      Path asked,
      String device,
      Instant now,
      BookWriter.ChannelOpening opening,
      BookWriter.ChannelOpening lockOpening) {
    Path path = withoutLink(asked);
    Optional<String> refusal =
        read(path).flatMap(bytes -> known(bytes, BookMarks.whyNone(path, bytes))).problem();
    if (refusal.isPresent()) {
      return Read.bad(refusal.get());
    }
    Optional<String> newer = newer(path);
    if (newer.isPresent()) {
      return toLook(path, device, newer.get());
    }
    Optional<BookLock> lock;
    try {
      lock = BookLock.take(path, lockOpening);
    } catch (IOException trouble) {
      return toLook(path, device, DiskTrouble.writing(BookLock.beside(path, ".lock"), trouble));
    }
    if (lock.isEmpty()) {
      return toLook(path, device, ANOTHER_WRITES);
    }
    Read<BookFile> opened = locked(path, device, now, opening, lock.get());
    boolean keepsLock =
        opened instanceof Read.Good<BookFile> good && good.value().whyReadOnly().isEmpty();
    if (!keepsLock) {
      lock.get().release();
    }
    return opened;
  }

  private static Read<BookFile> locked(
      Path path, String device, Instant now, BookWriter.ChannelOpening opening, BookLock lock) {
    Read<byte[]> read = read(path);
    if (!(read instanceof Read.Good<byte[]> good)) {
      return Read.bad(read.problem().orElse(""));
    }
    byte[] bytes = good.value();
    BookScan scan = BookScan.of(bytes);
    Optional<String> refusal = BookMarks.whyNone(path, bytes, scan);
    if (refusal.isPresent()) {
      return Read.bad(refusal.get());
    }
    try {
      BookWriter writer = BookWriter.open(path, opening, bytes);
      boolean ready = false;
      try {
        LastShown shown = LastShown.of(path);
        List<Problem> problems = new ArrayList<>(mendEnd(path, bytes, scan, writer, now));
        problems.addAll(shown.problems(path.toString(), scan.rows(), scan.lines()));
        if (!lock.ofSystem()) {
          problems.add(unguarded(path));
        }
        ready = true;
        return Read.good(
            new BookFile(
                path,
                device,
                scan,
                BookMarks.format(bytes) >= BookText.FORMAT,
                new BookOpening(
                    Optional.of(lock), Optional.of(writer), Optional.empty(), shown, problems)));
      } finally {
        if (!ready) {
          writer.close();
        }
      }
    } catch (IOException trouble) {
      return toLook(path, device, DiskTrouble.writing(path, trouble));
    }
  }

  /** Leaves the book ending with a whole line and its line end. */
  private static List<Problem> mendEnd(
      Path path, byte[] bytes, BookScan scan, BookWriter writer, Instant now) throws IOException {
    if (writer.length() != bytes.length) {
      throw new BookWriter.ChangedMeanwhile(path);
    }
    List<Problem> problems = new ArrayList<>();
    if (scan.wholeBytes() < bytes.length) {
      byte[] tail = Arrays.copyOfRange(bytes, scan.wholeBytes(), bytes.length);
      Path aside = setAside(path, tail, now);
      FailPoint.reached("torn-set-aside");
      writer.cutTo(scan.wholeBytes());
      problems.add(
          torn(
              path,
              bytes,
              scan,
              (LastShown.of(path).allIn(scan.rows()) ? "Nothing shown as done is lost. " : "")
                  + "What there was of it is kept in "
                  + aside
                  + "."));
    }
    if (scan.endsOpen()) {
      writer.append(new byte[] {'\n'});
    }
    return List.copyOf(problems);
  }

  private static Path setAside(Path path, byte[] tail, Instant now) throws IOException {
    String ending = ".torn-" + TORN_TIME.format(now);
    Path aside = BookLock.beside(path, ending + ".txt");
    for (int next = 2; Files.exists(aside); next++) {
      aside = BookLock.beside(path, ending + "-" + next + ".txt");
    }
    Disk.create(aside, tail);
    return aside;
  }

  private static Problem unguarded(Path path) {
    return new Problem(
        path.toString(),
        0,
        0,
        "The disk that holds this book knows no locks.",
        "Don't open the job in two programs at once: nothing would keep them apart.");
  }

  private static Problem torn(Path path, byte[] bytes, BookScan scan, String expected) {
    int line = 1;
    for (int i = 0; i < scan.wholeBytes(); i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    String tail =
        new String(
            bytes, scan.wholeBytes(), bytes.length - scan.wholeBytes(), StandardCharsets.UTF_8);
    return new Problem(
        path.toString(),
        line,
        1,
        "The last line was cut short while it was written: " + ProblemList.excerpt(tail),
        expected);
  }
}
