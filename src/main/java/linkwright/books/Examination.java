package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.files.Home;
import linkwright.files.ProblemList;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * How the user's folder and its disk are, in sentences, each found by trying it.
 *
 * @param findings what was found, in the order in which it was looked at
 */
public record Examination(List<Examined> findings) {
  /** Less room than this is told: a year of jobs takes less, but a disk so full fails others. */
  private static final long LEAST_ROOM = 10L << 20;

  private static final long MEGABYTE = 1L << 20;
  private static final String TRIAL = "trial of the disk";

  /**
   * One thing that was looked at.
   *
   * @param good whether all is well with it
   * @param sentence what was found
   */
  public record Examined(boolean good, String sentence) {}

  /** Copies the list. */
  public Examination {
    findings = List.copyOf(findings);
  }

  /** Whether nothing was found wrong. */
  public boolean good() {
    return findings.stream().allMatch(Examined::good);
  }

  /**
   * Looks at a folder, its disk and its books.
   *
   * @param home the user's folder
   * @param now the time by this machine's clock
   */
  public static Examination of(Home home, Instant now) {
    List<Examined> findings = new ArrayList<>();
    findings.add(folder(home));
    if (Files.isDirectory(home.folder())) {
      findings.add(room(home));
      findings.addAll(trial(home, now));
    }
    books(home, now, findings);
    return new Examination(findings);
  }

  private static Examined folder(Home home) {
    Path folder = home.folder().toAbsolutePath();
    if (Files.isDirectory(folder)) {
      return new Examined(true, "Your folder is " + folder + ".");
    }
    return Files.exists(folder)
        ? new Examined(
            false, folder + " is not a folder: move it away, or name another with --home.")
        : new Examined(
            true, "Your folder " + folder + " is not there yet; the first job makes it.");
  }

  private static Examined room(Home home) {
    try {
      long room = Files.getFileStore(home.folder()).getUsableSpace();
      String left = room / MEGABYTE + " MB";
      return room >= LEAST_ROOM
          ? new Examined(true, "The disk has room: " + left + ".")
          : new Examined(false, "The disk is nearly full, " + left + " are left: free some space.");
    } catch (IOException unknown) {
      return new Examined(false, "How much room the disk has cannot be told: " + reason(unknown));
    }
  }

  /** Makes a book of its own, writes an entry, reads it back, and takes everything away again. */
  private static List<Examined> trial(Home home, Instant now) {
    Path folder = home.folder().resolve("." + TRIAL.replace(' ', '-'));
    Read<BookFile> made = BookFile.create(folder, TRIAL, "doctor", now);
    if (made instanceof Read.Bad<BookFile> bad) {
      return List.of(new Examined(false, "Nothing can be written: " + bad.sentence()));
    }
    List<Examined> findings = new ArrayList<>();
    try (BookFile book = made.orThrow()) {
      boolean locks =
          book.problems().isEmpty()
              && BookFile.open(book.path(), "other", now)
                  .map(second -> second.whyReadOnly().isPresent())
                  .orElse(false);
      findings.add(
          locks
              ? new Examined(true, "The lock keeps a second program out.")
              : new Examined(
                  false, "The disk knows no locks: open a job in one program at a time."));
      long start = System.nanoTime();
      Optional<String> refused =
          book.append(
                  List.of(new BookLine(1, now, "doctor", "noted", java.util.Map.of("text", "x"))))
              .problem();
      double millis = (System.nanoTime() - start) / 1e6;
      boolean there =
          BookFile.look(book.path()).map(read -> read.lines().size() == 1).orElse(false);
      findings.add(
          refused.isEmpty() && there
              ? new Examined(
                  true,
                  String.format(Locale.ROOT, "An entry is written and synced in %.1f ms.", millis))
              : new Examined(false, refused.orElse("An entry that was written cannot be read.")));
    } catch (IOException closing) {
      findings.add(new Examined(false, "The trial could not be closed: " + reason(closing)));
    }
    clear(folder);
    return findings;
  }

  private static void clear(Path folder) {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(folder);
    } catch (IOException left) {
      // A folder with a trial's book in it harms nobody; the next trial takes another name.
      return;
    }
  }

  private static void books(Home home, Instant now, List<Examined> findings) {
    List<Problem> problems = new ArrayList<>();
    List<Path> books = home.books(problems);
    Instant latest = Instant.EPOCH;
    int entries = 0;
    for (Path path : books) {
      Read<BookFile> read = BookFile.look(path);
      read.problem().ifPresent(why -> problems.add(new Problem(path.toString(), 0, 0, why, "")));
      List<BookLine> lines = read.map(BookFile::lines).orElse(List.of());
      read.found().ifPresent(book -> problems.addAll(book.problems()));
      entries += lines.size();
      for (BookLine line : lines) {
        latest = line.at().isAfter(latest) ? line.at() : latest;
      }
    }
    String what =
        books.size() + (books.size() == 1 ? " book, " : " books, ") + entries + " entries";
    findings.add(
        problems.isEmpty()
            ? new Examined(true, what + ": nothing is missing, moved or changed.")
            : new Examined(false, what + ". " + problems.size() + " problems:"));
    ProblemList.first("", problems)
        .forEach(problem -> findings.add(new Examined(false, "  " + problem.sentence())));
    findings.add(clock(now, latest));
  }

  private static Examined clock(Instant now, Instant latest) {
    Duration ahead = Duration.between(now, latest);
    return ahead.toMinutes() < 1
        ? new Examined(true, "The clock is not behind the last entry.")
        : new Examined(
            false,
            "The clock is "
                + ahead.toMinutes()
                + " min behind the last entry, of "
                + latest
                + ": was it set back?");
  }

  private static String reason(IOException trouble) {
    return trouble.getMessage() == null ? "no reason is given." : trouble.getMessage() + ".";
  }

  /** A line about the formats that this program knows. */
  public static String formats() {
    byte[] header = BookText.HEADER.getBytes(StandardCharsets.UTF_8);
    return "It writes job books of format "
        + BookMarks.format(header)
        + " and reads all up to it; all other files are of format 1.";
  }
}
