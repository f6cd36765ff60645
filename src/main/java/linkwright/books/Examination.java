package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.disk.Disk;
import linkwright.files.Home;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;

/**
 * How the user's folder and its disk are, in sentences, each found by trying it.
 *
 * @param findings what was found, in the order in which it was looked at
 */
public record Examination(List<Examined> findings) {
  private static final int TRIALS = 5;

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
   * @param devices where this machine's name in the books is kept
   * @param now the time by this machine's clock
   */
  public static Examination of(Home home, DeviceId devices, Instant now) {
    List<Examined> findings = new ArrayList<>();
    findings.add(folder(home));
    if (Files.isDirectory(home.folder())) {
      findings.add(room(home));
      findings.addAll(trial(home, now));
    }
    devices.trouble().ifPresent(why -> findings.add(new Examined(false, why)));
    findings.addAll(BookExamination.of(home, now));
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
        : Disk.whyNoFolder(folder)
            .map(
                why ->
                    new Examined(
                        false,
                        "Your folder " + folder + " is not there and cannot be made: " + why))
            .orElseGet(
                () ->
                    new Examined(
                        true,
                        "Your folder " + folder + " is not there yet; the first job makes it."));
  }

  private static Examined room(Home home) {
    try {
      long room = Files.getFileStore(home.folder()).getUsableSpace();
      String left = size(room);
      return room >= LEAST_ROOM
          ? new Examined(true, "The disk has room: " + left + ".")
          : new Examined(false, "The disk is nearly full, " + left + " are left: free some space.");
    } catch (IOException unknown) {
      return new Examined(false, "How much room the disk has cannot be told: " + reason(unknown));
    }
  }

  private static String size(long bytes) {
    return bytes >= LEAST_ROOM ? bytes / MEGABYTE + " MB" : bytes / 1024 + " kB";
  }

  /** Makes a book of its own, writes an entry, reads it back, and takes everything away again. */
  private static List<Examined> trial(Home home, Instant now) {
    Path folder = home.folder().resolve("." + TRIAL.replace(' ', '-'));
    Read<BookFile> made = BookFile.create(folder, TRIAL, "doctor", now);
    if (made instanceof Read.Bad<BookFile> bad) {
      clear(folder);
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
      findings.add(written(book, now));
    } catch (IOException closing) {
      findings.add(new Examined(false, "The trial could not be closed: " + reason(closing)));
    }
    clear(folder);
    return findings;
  }

  /** Several, for the first takes the time of loading what does it. */
  private static Examined written(BookFile book, Instant now) {
    double[] millis = new double[TRIALS];
    for (int i = 0; i < TRIALS; i++) {
      BookLine line = new BookLine(i + 1, now, "doctor", "noted", Map.of("text", "x"));
      long start = System.nanoTime();
      Optional<String> refused = book.append(List.of(line)).problem();
      millis[i] = (System.nanoTime() - start) / 1e6;
      if (refused.isPresent()) {
        return new Examined(false, refused.get());
      }
    }
    Arrays.sort(millis);
    return BookFile.look(book.path()).map(read -> read.lines().size() == TRIALS).orElse(false)
        ? new Examined(
            true,
            "An entry is written and synced in %s ms (the middle one of %s)."
                .formatted(Decimals.fixed(millis[TRIALS / 2], 1), TRIALS))
        : new Examined(false, "Entries that were written cannot be read again.");
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
