package linkwright.books;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import linkwright.disk.DiskTrouble;
import linkwright.disk.FailPoint;
import linkwright.files.yaml.ProblemList;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.routine.Routine;

/**
 * A job book on the disk: entries one a line, only ever added to. One program writes it at a time;
 * whoever comes second may look. An entry counts as kept only after {@link #append} has answered
 * with good news: it is then written and synced.
 */
public final class BookFile implements Closeable {
  private static final int CHECK_DIGITS = 8;

  private final Path path;
  private final String device;
  private final Optional<BookLock> lock;
  private final Optional<BookWriter> writer;
  private final Optional<String> whyReadOnly;
  private final List<Problem> openingProblems;
  private List<BookScan.ScannedLine> rows;
  private int lineCount;
  private final LastShown shown;
  private BookReading reading;
  private Set<BookReading.Name> names = Set.of();
  private final Map<String, String> lastChecks;
  private boolean secondFormat;
  private boolean changedElsewhere;

  BookFile(Path path, String device, BookScan scan, boolean secondFormat, BookOpening opened) {
    this.path = path;
    this.device = device;
    this.lock = opened.lock();
    this.writer = opened.writer();
    this.whyReadOnly = opened.whyReadOnly();
    this.openingProblems = opened.problems();
    this.rows = scan.rows();
    this.lineCount = scan.lines();
    this.secondFormat = secondFormat;
    this.shown = opened.shown();
    this.lastChecks = writer.isPresent() ? Continuity.lastChecks(scan.rows()) : new HashMap<>();
    // What was shown and is gone leaves a gap that every later reading sees.
    shown
        .of(device)
        .filter(last -> last.number() > highest())
        .ifPresent(last -> lastChecks.put(device, last.check()));
    this.reading = BookReading.of(path.toString(), rows);
  }

  /** The names of the entries in use; who only reads them asks for none. */
  private Set<BookReading.Name> names() {
    if (names.isEmpty()) {
      names = reading.names();
    }
    return names;
  }

  /**
   * Makes the book of a new job and opens it.
   *
   * @param folder where books are kept; made if it is not there yet
   * @param jobName what the user calls the job; the file is named after it
   * @param device the name of this device, not blank
   * @param now the time, for what may have to be set aside
   * @return the open book, or a sentence that says what the disk refused
   */
  public static Read<BookFile> create(Path folder, String jobName, String device, Instant now) {
    return BookOpening.create(folder, jobName).flatMap(path -> open(path, device, now));
  }

  /**
   * Opens the book of that very name to write it, and makes it first where there is none.
   *
   * @param path the book's file; its folder is made if it is not there yet
   * @param device the name of this device, not blank
   * @param now the time, for what may have to be set aside
   * @return the open book, or a sentence
   */
  public static Read<BookFile> openOrMake(Path path, String device, Instant now) {
    return BookOpening.make(path)
        .flatMap(there -> open(there, device, now, BookWriter.APPENDING, BookLock.LOCK_FILE));
  }

  /**
   * Opens a book to write it, or to look if somebody else writes it, the disk allows no more, or it
   * was emptied after entries of it were shown as done ({@link #whyReadOnly}). A last line that was
   * cut short is set aside in a file beside the book.
   *
   * @param path the book's file
   * @param device the name of this device, not blank
   * @param now the time, for the name of the file that keeps a torn line
   * @return the open book, or a sentence that says why it cannot even be read
   */
  public static Read<BookFile> open(Path path, String device, Instant now) {
    return BookOpening.emptied(path)
        .map(why -> BookOpening.toLook(path, device, why))
        .orElseGet(() -> open(path, device, now, BookWriter.APPENDING, BookLock.LOCK_FILE));
  }

  static Read<BookFile> open(
      Path path,
      String device,
      Instant now,
      BookWriter.ChannelOpening channelOpening,
      BookWriter.ChannelOpening lockOpening) {
    if (device.isBlank()) {
      throw new IllegalArgumentException("device must not be blank: '" + device + "'");
    }
    return BookOpening.toWrite(path, device, now, channelOpening, lockOpening);
  }

  /** Opens a book to look, without a lock and without changing anything. */
  public static Read<BookFile> look(Path path) {
    return BookOpening.toLook(path, "looker", "This book is open to look, not to write.");
  }

  /** Whether another program, or another window of this one, writes that book now. */
  public static boolean isWrittenElsewhere(Path path) {
    return Files.exists(BookLock.beside(path, ".lock")) && !BookOpening.isFree(path).orElse(true);
  }

  /** The book's file. */
  public Path path() {
    return path;
  }

  /** Why nothing can be added; empty when this program writes the book. */
  public synchronized Optional<String> whyReadOnly() {
    return whyReadOnly;
  }

  /** Whether this book is open to look for another program wrote it, and that has gone since. */
  public synchronized boolean isLetGo() {
    return BookOpening.letGo(path, whyReadOnly);
  }

  /**
   * Whether an entry was refused for somebody else had a hand in the book: it is to be read anew.
   */
  public synchronized boolean isChangedElsewhere() {
    return changedElsewhere;
  }

  /** The entries in use, in the order of the file; unchangeable. */
  public synchronized List<BookLine> lines() {
    return reading.lines();
  }

  /** Every line as it stands, used or not. */
  synchronized List<BookScan.ScannedLine> rows() {
    return rows;
  }

  /** The lines that are kept but not used until the user accepts them; unchangeable. */
  public synchronized List<Suspect> suspects() {
    return reading.suspects();
  }

  /**
   * What is wrong with the line that the book begins with, which keeps no entry from being read.
   */
  public Optional<Problem> headless() {
    return BookOpening.headless(this);
  }

  /** All there is to tell about the book, located; unchangeable. */
  public synchronized List<Problem> problems() {
    List<Problem> all = new ArrayList<>(openingProblems);
    all.addAll(reading.problems());
    return ProblemList.first(path.toString(), all);
  }

  /** Steps that the book names and its routine does not have, each where it first stands. */
  public synchronized List<Problem> unknownSteps(Function<String, Optional<Routine>> routines) {
    return StepNames.problems(path.toString(), rows, routines);
  }

  /** Kinds of the entries in use that mean nothing here, each where it first stands. */
  public synchronized List<Problem> unknownKinds() {
    return UnknownKinds.problems(
        path.toString(),
        rows.stream()
            .filter(
                row -> row.entry().map(BookReading.Name::of).filter(names()::contains).isPresent())
            .toList());
  }

  /** A number that this device has not given yet, not even to a line that can't be read now. */
  public synchronized int nextNumber() {
    long unread = rows.stream().filter(row -> row.entry().isEmpty()).count();
    int given = Math.max(highest(), shown.of(device).map(LastShown.Shown::number).orElse(0));
    return given + (int) unread + 1;
  }

  private int highest() {
    return rows.stream()
        .flatMap(row -> row.entry().stream())
        .filter(entry -> entry.device().equals(device))
        .mapToInt(BookLine::number)
        .max()
        .orElse(0);
  }

  /**
   * Adds entries, all in one write, and waits until they are on the disk.
   *
   * @param added the entries; each device gives every number once
   * @return all entries in use now, or a sentence; nothing was added then
   * @throws IllegalArgumentException if an entry's device and number are in the book already
   */
  public synchronized Read<List<BookLine>> append(List<BookLine> added) {
    requireNew(added);
    if (writer.isEmpty()) {
      return Read.bad(whyReadOnly.orElse(""));
    }
    byte[] bytes = text(added).getBytes(StandardCharsets.UTF_8);
    try {
      writer.get().append(bytes);
    } catch (IOException trouble) {
      changedElsewhere |= trouble instanceof BookWriter.ChangedMeanwhile;
      return Read.bad(DiskTrouble.writing(path, trouble));
    }
    keep(added, bytes);
    FailPoint.passed("before-show");
    remember(added);
    return Read.good(reading.lines());
  }

  /**
   * Accepts a line whose check fails: an entry that names it is added, and from then on the line is
   * used in its place.
   *
   * @param suspect one of {@link #suspects()}
   * @param at the time
   * @return all entries in use now, or a sentence
   */
  public synchronized Read<List<BookLine>> accept(Suspect suspect, Instant at) {
    if (suspect.reading().isEmpty()) {
      return Read.bad(
          "Line "
              + suspect.line()
              + " of "
              + path
              + " cannot be read as an entry, so there is nothing to accept: mend it in an editor"
              + " first.");
    }
    return append(
        List.of(
            new BookLine(
                nextNumber(),
                at,
                device,
                BookReading.ACCEPTED,
                Map.of(BookReading.ACCEPTED_CHECK, suspect.check()))));
  }

  /** The lines of entries, each linked to the one that its device made before it. */
  private String text(List<BookLine> added) {
    StringBuilder text = new StringBuilder();
    if (lineCount == 0) {
      // An empty file is a book from its first entry on; whoever only opens it leaves it empty.
      text.append(BookText.HEADER).append('\n');
    } else if (!secondFormat) {
      text.append(BookText.FROM_HERE).append('\n');
    }
    Map<String, String> last = new HashMap<>(lastChecks);
    for (BookLine line : added) {
      String written = BookText.encode(line, last.getOrDefault(line.device(), ""));
      last.put(line.device(), written.substring(written.length() - CHECK_DIGITS));
      text.append(written).append('\n');
    }
    return text.toString();
  }

  private void remember(List<BookLine> added) {
    added.stream()
        .filter(line -> line.device().equals(device))
        .mapToInt(BookLine::number)
        .max()
        .ifPresent(
            number -> shown.remember(device, new LastShown.Shown(number, lastChecks.get(device))));
  }

  private void requireNew(List<BookLine> added) {
    Set<BookReading.Name> fresh = new HashSet<>();
    for (BookLine line : added) {
      BookReading.Name name = BookReading.Name.of(line);
      if (names().contains(name) || !fresh.add(name)) {
        throw new IllegalArgumentException(
            "entry " + line.number() + " of " + line.device() + " is in the book already");
      }
    }
  }

  private void keep(List<BookLine> added, byte[] bytes) {
    secondFormat = true;
    BookScan scan = BookScan.of(bytes);
    List<BookScan.ScannedLine> more = new ArrayList<>(rows);
    for (BookScan.ScannedLine row : scan.rows()) {
      more.add(row.movedDown(lineCount));
    }
    rows = List.copyOf(more);
    lineCount += scan.lines();
    lastChecks.putAll(Continuity.lastChecks(scan.rows()));
    boolean accepts = added.stream().anyMatch(line -> line.kind().equals(BookReading.ACCEPTED));
    reading = accepts ? BookReading.of(path.toString(), rows) : reading.with(added);
    if (accepts) {
      names = reading.names();
    } else {
      added.forEach(line -> names.add(BookReading.Name.of(line)));
    }
  }

  /** Takes away a book in which there is no entry; for a job that could not be begun. */
  public synchronized void discard() {
    try {
      if (rows.isEmpty()) {
        Files.deleteIfExists(path);
        Files.deleteIfExists(BookLock.beside(path, ".lock"));
      }
    } catch (IOException cannot) {
      // A book that holds its header alone harms nobody.
      return;
    }
  }

  /** Lets go of the book; entries that were appended are safe already. */
  @Override
  public synchronized void close() throws IOException {
    try {
      if (writer.isPresent()) {
        writer.get().close();
      }
    } finally {
      if (lock.isPresent()) {
        lock.get().close();
      }
    }
  }
}
