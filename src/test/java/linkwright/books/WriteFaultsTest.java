package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import linkwright.disk.FailPoint;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What becomes of entries when the program dies or the disk fails on the way. The seed and round of
 * a failure are told; {@code -Dlinkwright.rounds=10000} goes on longer, {@code -Dlinkwright.seed}
 * replays one.
 */
class WriteFaultsTest {
  private static final long SEED = Long.getLong("linkwright.seed", 20261126L);
  private static final int ROUNDS = Integer.getInteger("linkwright.rounds", 2000);

  @TempDir Path folder;

  /** A death: nothing after it is done, not even what a fault of the disk would undo. */
  private static final class Died extends RuntimeException {
    Died(String where) {
      super(where, null, false, false);
    }
  }

  /** Which faults a channel shows. */
  private static final class Disk0 {
    boolean writeFails;
    boolean syncFails;
    boolean truncateFails;
    int bytes;
    IOException fault = new IOException("Input/output error");

    FileChannel open(Path path) throws IOException {
      return new PassingChannel(BookWriter.APPENDING.open(path)) {
        @Override
        public int write(ByteBuffer source) throws IOException {
          if (!writeFails) {
            return super.write(source);
          }
          ByteBuffer part = source.duplicate();
          part.limit(Math.min(part.limit(), part.position() + bytes));
          super.write(part);
          throw fault;
        }

        @Override
        public void force(boolean metaData) throws IOException {
          if (syncFails) {
            throw fault;
          }
          super.force(metaData);
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
          if (truncateFails) {
            throw fault;
          }
          return super.truncate(size);
        }
      };
    }
  }

  private BookFile open(Path path, BookWriter.ChannelOpening opening) {
    return BookFile.open(path, "bench", BookFileTest.NOW, opening, BookLock.LOCK_FILE).orThrow();
  }

  private Path newBook(String name) throws IOException {
    try (BookFile book =
        BookFile.create(folder.resolve(name), "Trace", "bench", BookFileTest.NOW).orThrow()) {
      book.append(List.of(BookFileTest.entry(1))).orThrow();
      return book.path();
    }
  }

  /** What was shown is there once; what was not shown is there once or not at all. */
  private void holds(String which, Path path, List<Integer> shown, List<Integer> tried) {
    BookFile book = BookFile.look(path).orThrow();
    List<Integer> there = book.lines().stream().map(BookLine::number).toList();
    assertThat(there).as(which).doesNotHaveDuplicates().containsAll(shown);
    assertThat(tried).as(which).containsAll(there);
  }

  @Test
  void aDeathAtEachPointLosesNothingThatWasShown() throws IOException {
    for (String point : List.of("after-write", "after-sync", "before-show")) {
      Path path = newBook(point);
      BookFile book = open(path, BookWriter.APPENDING);
      FailPoint.during(
          name -> {
            if (name.equals(point)) {
              throw new Died(name);
            }
          },
          () ->
              assertThatCode(() -> book.append(List.of(BookFileTest.entry(2))))
                  .as(point)
                  .isInstanceOf(Died.class));
      book.close();
      holds(point, path, List.of(1), List.of(1, 2));
      try (BookFile again = open(path, BookWriter.APPENDING)) {
        assertThat(again.problems()).as(point).isEmpty();
        assertThat(again.append(List.of(BookFileTest.entry(again.nextNumber()))).isGood()).isTrue();
      }
      assertThat(BookFile.look(path).orThrow().problems()).as(point).isEmpty();
    }
  }

  /** What a disk may say: an error, full, a share used up, only to be read, denied, gone. */
  private static IOException fault(Random chance, Path path) {
    return switch (chance.nextInt(6)) {
      case 0 -> new IOException("Input/output error");
      case 1 -> new IOException("No space left on device");
      case 2 -> new IOException("Disk quota exceeded");
      case 3 -> new IOException("Read-only file system");
      case 4 -> new AccessDeniedException(path.toString());
      default -> new NoSuchFileException(path.toString());
    };
  }

  @Test
  void aDiskThatFailsInAnyWayIsToldAndLosesNothingThatWasShown() throws IOException {
    Random chance = new Random(SEED);
    for (int round = 0; round < ROUNDS / 10; round++) {
      String which = "seed " + SEED + ", round " + round;
      Path path = newBook("disk-" + round);
      try {
        aRoundOnABadDisk(which, path, chance);
      } catch (AssertionError | RuntimeException wrong) {
        Path left = Path.of("target", "disk-fault-" + SEED + "-" + round + ".yaml");
        Files.copy(path, left, StandardCopyOption.REPLACE_EXISTING);
        throw new AssertionError(
            which
                + ", its book is kept in "
                + left
                + "; again: mvn -q -Dfast test -Dtest=WriteFaultsTest -Dlinkwright.seed="
                + SEED
                + " -Dlinkwright.rounds="
                + ROUNDS,
            wrong);
      }
      try (Stream<Path> files = Files.list(path.getParent())) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private void aRoundOnABadDisk(String which, Path path, Random chance) throws IOException {
    List<Integer> shown = new ArrayList<>(List.of(1));
    List<Integer> tried = new ArrayList<>(List.of(1));
    Disk0 disk = new Disk0();
    try (BookFile book = open(path, disk::open)) {
      for (int i = 0; i < 12; i++) {
        disk.writeFails = chance.nextInt(4) == 0;
        disk.syncFails = chance.nextInt(4) == 0;
        disk.truncateFails = chance.nextInt(3) == 0;
        disk.bytes = chance.nextInt(300);
        disk.fault = fault(chance, path);
        boolean vanished = chance.nextInt(8) == 0;
        Path away = path.resolveSibling("away.txt");
        if (vanished) {
          Files.move(path, away);
        }
        int number = book.nextNumber();
        tried.add(number);
        Read<List<BookLine>> kept = book.append(List.of(BookFileTest.entry(number)));
        if (kept.isGood()) {
          shown.add(number);
        } else {
          assertThat(kept.problem().orElse("")).as(which).matches("(?s)[A-Z/].{20,}[.:?].*");
        }
        if (vanished) {
          assertThat(kept.isGood()).as("%s: kept in what is not there", which).isFalse();
          Files.move(away, path);
        }
      }
    }
    holds(which, path, shown, tried);
    try (BookFile again = open(path, BookWriter.APPENDING)) {
      assertThat(again.problems())
          .as(which)
          .extracting(Problem::wrong)
          .allMatch(wrong -> wrong.startsWith("The last line was cut short"));
    }
  }

  @Test
  void whenNeitherSyncNorTakingBackWorksItIsNotKnownAndSaidSo() throws IOException {
    Path path = newBook("uncertain");
    Disk0 disk = new Disk0();
    try (BookFile book = open(path, disk::open)) {
      disk.syncFails = true;
      disk.truncateFails = true;
      assertThat(book.append(List.of(BookFileTest.entry(2))).problem())
          .hasValueSatisfying(
              why ->
                  assertThat(why)
                      .startsWith("It is not known whether this was kept")
                      .contains("Look in the book"));
    }
    assertThat(BookFile.look(path).orThrow().lines()).hasSize(2);
  }

  /** Any one byte of a small book changed in any way, and stretches of it gone or doubled. */
  @Test
  void noMutationOfABookIsACrashAndNoneGoesUntold() throws IOException {
    Path path = newBook("mutated");
    try (BookFile book = open(path, BookWriter.APPENDING)) {
      for (int n = 2; n <= 6; n++) {
        book.append(List.of(BookFileTest.entry(n))).orThrow();
      }
    }
    byte[] whole = Files.readAllBytes(path);
    int header = BookText.HEADER.length() + 1;
    Random chance = new Random(SEED);
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bad = mutated(whole, header, chance);
      Files.write(path, bad);
      String which = "seed " + SEED + ", round " + round;
      Read<BookFile> read = BookFile.look(path);
      List<BookLine> lines = read.map(BookFile::lines).orElse(List.of());
      boolean told = read.map(book -> !book.problems().isEmpty()).orElse(true);
      boolean same =
          lines.equals(List.of(1, 2, 3, 4, 5, 6).stream().map(BookFileTest::entry).toList());
      if (!told && !same) {
        Path replay = Path.of("target", "book-mutation-" + SEED + "-" + round + ".yaml");
        Files.write(replay, bad);
        assertThat(told).as("%s goes untold; it is kept in %s", which, replay).isTrue();
      }
    }
  }

  private static byte[] mutated(byte[] whole, int from, Random chance) {
    int at = from + chance.nextInt(whole.length - from);
    int length = Math.min(whole.length - at, 1 + chance.nextInt(200));
    java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
    int kind = chance.nextInt(4);
    out.write(whole, 0, at);
    switch (kind) {
      case 0 -> out.write(whole[at] ^ (1 << chance.nextInt(8)));
      case 1 -> out.write(chance.nextInt(256));
      case 2 -> out.write(whole, at, length);
      default -> {}
    }
    int next = kind < 2 ? at + 1 : kind == 2 ? at : at + length;
    out.write(whole, next, whole.length - next);
    return out.toByteArray();
  }

  @Test
  void clocksThatJumpChangeNeitherOrderNorCount() throws IOException {
    Random chance = new Random(SEED);
    for (int round = 0; round < ROUNDS / 100; round++) {
      String which = "seed " + SEED + ", round " + round;
      Path path = newBook("clock-" + round);
      try (BookFile book = open(path, BookWriter.APPENDING)) {
        for (int n = 2; n <= 100; n++) {
          BookLine jumped =
              new BookLine(
                  n,
                  BookFileTest.NOW.plusSeconds(chance.nextInt(400_000_000) - 200_000_000L),
                  "bench",
                  "six-counted",
                  Map.of("count", 1L));
          book.append(List.of(jumped)).orThrow();
        }
      }
      BookMerge merged = BookMerge.of(List.of(path, path)).orThrow();
      Path together = merged.write(folder.resolve("together-" + round + ".yaml")).orThrow();
      assertThat(BookFile.look(together).orThrow().lines())
          .as(which)
          .isEqualTo(BookFile.look(path).orThrow().lines());
      assertThat(BookFile.look(together).orThrow().problems()).as(which).isEmpty();
    }
  }
}
