package linkwright.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import linkwright.disk.Disk;
import linkwright.job.ClockMoves;

/**
 * How the computer's clock went beside one that nobody can set, noted with every entry, so that the
 * next start knows whether it was set forward while the program was shut. The other clock counts
 * from the start of the machine, sleep and all; across a restart of the machine nothing is known.
 */
public final class ClockNotes {
  /** Nothing is noted and nothing known. */
  public static final ClockNotes NONE = new ClockNotes(Path.of(""), Optional::empty);

  /** Clocks that are mended a little now and then are no matter. */
  private static final Duration SLIGHT = Duration.ofMinutes(1);

  private static final int MOST = 20;
  private static final Path BOOT = Path.of("/proc/sys/kernel/random/boot_id");
  private static final Path UPTIME = Path.of("/proc/uptime");

  private final Path file;
  private final Supplier<Optional<Boot>> boot;

  /**
   * Since when the machine is up.
   *
   * @param id a name of that start of it
   * @param up how long ago that was
   */
  record Boot(String id, Duration up) {}

  private record Note(Boot boot, Instant clock, List<ClockMoves.Move> moves) {}

  ClockNotes(Path file, Supplier<Optional<Boot>> boot) {
    this.file = file;
    this.boot = boot;
  }

  /** Those of this machine, kept in that folder; where the system tells no such clock, none. */
  public static ClockNotes in(Path stateFolder) {
    return new ClockNotes(stateFolder.resolve("clock"), ClockNotes::system);
  }

  private static Optional<Boot> system() {
    try {
      String up = Files.readString(UPTIME, StandardCharsets.US_ASCII).strip().split("\\s+", 2)[0];
      String id = Files.readString(BOOT, StandardCharsets.US_ASCII).strip();
      return Optional.of(new Boot(id, Duration.parse("PT" + up + "S")));
    } catch (IOException | DateTimeException notThisSystem) {
      return Optional.empty();
    }
  }

  /** By how much the clock was set forward up to now. */
  ClockMoves moves(Instant now) {
    return boot.get().map(here -> new ClockMoves(moves(here, now))).orElse(ClockMoves.NONE);
  }

  private List<ClockMoves.Move> moves(Boot here, Instant now) {
    Optional<Note> last = read().filter(note -> note.boot().id().equals(here.id()));
    if (last.isEmpty()) {
      return List.of();
    }
    Note note = last.get();
    List<ClockMoves.Move> moves = new ArrayList<>(note.moves());
    Duration by = Duration.between(note.clock(), now).minus(here.up().minus(note.boot().up()));
    if (by.compareTo(SLIGHT) > 0) {
      moves.add(new ClockMoves.Move(note.clock(), by));
    }
    return moves.subList(Math.max(0, moves.size() - MOST), moves.size());
  }

  /** Something is entered now. */
  void note(Instant now) {
    boot.get().ifPresent(here -> write(new Note(here, now, moves(here, now))));
  }

  private void write(Note note) {
    StringBuilder text = new StringBuilder();
    text.append(note.boot().id()).append('\n');
    text.append(note.boot().up()).append(' ').append(note.clock()).append('\n');
    note.moves().forEach(move -> text.append(move.by() + " " + move.until() + "\n"));
    try {
      Disk.folders(file.getParent());
      Disk.replaceUnsynced(file, text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException notKept) {
      // The entry is in its book; without the note the computer's clock is taken at its word.
    }
  }

  private Optional<Note> read() {
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      List<ClockMoves.Move> pairs = new ArrayList<>();
      for (String line : lines.subList(Math.min(1, lines.size()), lines.size())) {
        String[] words = line.split(" ", 2);
        pairs.add(new ClockMoves.Move(Instant.parse(words[1]), Duration.parse(words[0])));
      }
      return pairs.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Note(
                  new Boot(lines.get(0), pairs.get(0).by()),
                  pairs.get(0).until(),
                  pairs.subList(1, pairs.size())));
    } catch (IOException | DateTimeException | ArrayIndexOutOfBoundsException unreadable) {
      return Optional.empty();
    }
  }
}
