package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the disk can do to a book, and what is said then. */
class BookTroubleTest {
  @TempDir Path folder;
  private Path path;

  @BeforeEach
  void aBookWithTwoEntries() throws IOException {
    try (BookFile book =
        BookFile.create(folder.resolve("jobs"), "Trace", "bench", BookFileTest.NOW).orThrow()) {
      book.append(List.of(BookFileTest.entry(1), BookFileTest.entry(2))).orThrow();
      path = book.path();
    }
  }

  private BookFile open(BookWriter.ChannelOpening opening) {
    return BookFile.open(path, "bench", BookFileTest.NOW, opening, BookLock.LOCK_FILE).orThrow();
  }

  @Test
  void aFullDiskIsToldAndTheBookStaysWholeAndGoesOnLater() throws IOException {
    byte[] before = Files.readAllBytes(path);
    Fault fault = new Fault("No space left on device", 17);
    try (BookFile book = open(fault::channel)) {
      fault.on = true;
      assertThat(book.append(List.of(BookFileTest.entry(3))).problem())
          .contains(
              "The disk is full, nothing more was written to "
                  + path
                  + ": free some space and enter it again.");
      assertThat(book.lines()).hasSize(2);
      assertThat(Files.readAllBytes(path)).isEqualTo(before);
      fault.on = false;
      assertThat(book.append(List.of(BookFileTest.entry(3))).orThrow()).hasSize(3);
    }
    try (BookFile again = open(BookWriter.APPENDING)) {
      assertThat(again.lines()).hasSize(3);
      assertThat(again.problems()).isEmpty();
    }
  }

  @Test
  void aWriteThatCannotBeTakenBackEitherIsTakenBackBeforeTheNext() throws IOException {
    Fault fault = new Fault("Input/output error", 17);
    fault.truncateFails = true;
    try (BookFile book = open(fault::channel)) {
      fault.on = true;
      assertThat(book.append(List.of(BookFileTest.entry(3))).problem())
          .contains("The file " + path + " cannot be written: Input/output error.");
      assertThat(Files.readString(path)).endsWith("\n- {n: 3, at: 2026");
      fault.on = false;
      book.append(List.of(BookFileTest.entry(3))).orThrow();
    }
    try (BookFile again = open(BookWriter.APPENDING)) {
      assertThat(again.lines()).hasSize(3);
      assertThat(again.problems()).isEmpty();
    }
  }

  @Test
  void aDiskThatCanOnlyBeReadIsToldAndTheBookOpensToLook() throws IOException {
    try (BookFile book =
        open(
            any -> {
              throw new IOException("Read-only file system");
            })) {
      assertThat(book.lines()).hasSize(2);
      assertThat(book.whyReadOnly())
          .contains("The disk that holds " + path + " can only be read: nothing was written.");
    }
  }

  @Test
  void aFolderThatVanishedIsToldAndNothingIsShownAsKept() throws IOException {
    try (BookFile book = open(BookWriter.APPENDING)) {
      Files.move(folder.resolve("jobs"), folder.resolve("elsewhere"));
      assertThat(book.append(List.of(BookFileTest.entry(3))).problem())
          .contains(
              "The folder for " + path + " is not there any more: bring it back, then open again.");
      assertThat(book.lines()).hasSize(2);
    }
  }

  @Test
  void aBookThatAnEditorReplacedIsNotWrittenIntoTheVoid() throws IOException {
    try (BookFile book = open(BookWriter.APPENDING)) {
      String text = Files.readString(path);
      Files.delete(path);
      Files.writeString(folder.resolve("keeps the old file's number busy"), "x");
      Files.writeString(path, text + "# a remark\n");
      assertThat(book.append(List.of(BookFileTest.entry(3))).problem())
          .contains(
              path
                  + " was changed by another program since it was opened here. Nothing was written;"
                  + " trying again reads it anew.");
    }
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    Path none = folder.resolve("none.yaml");
    assertThat(BookFile.open(none, "bench", BookFileTest.NOW).problem())
        .contains("There is no file " + none + ".");
    assertThat(BookFile.open(folder, "bench", BookFileTest.NOW).problem())
        .contains(folder + " is a folder, not a job book.");
  }

  @Test
  void aFolderThatCannotBeMadeIsTold() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "not a folder");
    assertThat(BookFile.create(file, "Trace", "bench", BookFileTest.NOW).problem())
        .contains(
            "Something else already stands at " + file + ": move it away or choose another name.");
  }

  @Test
  void aSecondOpenerInTheSameProgramMayOnlyLook() throws IOException {
    try (BookFile first = open(BookWriter.APPENDING)) {
      try (BookFile second = open(BookWriter.APPENDING)) {
        assertThat(second.whyReadOnly())
            .hasValueSatisfying(
                why -> assertThat(why).startsWith("Another Linkwright is writing this job now"));
        assertThat(second.lines()).hasSize(2);
        assertThat(second.append(List.of(BookFileTest.entry(3))).isGood()).isFalse();
      }
      // Closing the one who only looked must not free the other's lock.
      try (BookFile third = open(BookWriter.APPENDING)) {
        assertThat(third.whyReadOnly()).isPresent();
      }
      assertThat(first.append(List.of(BookFileTest.entry(3))).isGood()).isTrue();
    }
    try (BookFile later = open(BookWriter.APPENDING)) {
      assertThat(later.whyReadOnly()).isEmpty();
    }
  }

  @Test
  void anEntryIsSyncedBeforeItIsToldAsKept() throws IOException {
    List<String> done = new ArrayList<>();
    BookWriter.ChannelOpening watched =
        file ->
            new PassingChannel(BookWriter.APPENDING.open(file)) {
              @Override
              public int write(ByteBuffer bytes) throws IOException {
                done.add("write");
                return super.write(bytes);
              }

              @Override
              public void force(boolean metaData) throws IOException {
                super.force(metaData);
                done.add("sync");
              }
            };
    try (BookFile book = open(watched)) {
      book.append(List.of(BookFileTest.entry(3), BookFileTest.entry(4))).orThrow();
      assertThat(done).containsExactly("write", "sync");
    }
  }

  @Test
  void aDiskThatKnowsNoLocksIsToldAndCanBeWritten() throws IOException {
    BookWriter.ChannelOpening noLocks =
        lockFile ->
            new PassingChannel(BookLock.LOCK_FILE.open(lockFile)) {
              @Override
              public FileLock tryLock(long position, long size, boolean shared) throws IOException {
                throw new IOException("No locks available");
              }
            };
    try (BookFile book =
        BookFile.open(path, "bench", BookFileTest.NOW, BookWriter.APPENDING, noLocks).orThrow()) {
      assertThat(book.problems())
          .extracting(Problem::wrong)
          .containsExactly("The disk that holds this book knows no locks.");
      assertThat(book.append(List.of(BookFileTest.entry(3))).isGood()).isTrue();
      try (BookFile second = open(BookWriter.APPENDING)) {
        assertThat(second.whyReadOnly()).as("within one program").isPresent();
      }
    }
  }

  @Test
  void onlyTheBookItsLockAndWhatWasShownLastStandInTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(path.getParent())) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("trace.yaml", "trace.lock", "trace.last");
    }
  }

  /** A channel that fails in the middle of a write, as a full disk does. */
  private static final class Fault {
    final String message;
    final int afterBytes;
    boolean on;
    boolean truncateFails;

    Fault(String message, int afterBytes) {
      this.message = message;
      this.afterBytes = afterBytes;
    }

    FileChannel channel(Path path) throws IOException {
      return new FaultyChannel(BookWriter.APPENDING.open(path), this);
    }
  }

  private static final class FaultyChannel extends PassingChannel {
    private final Fault fault;

    FaultyChannel(FileChannel inner, Fault fault) {
      super(inner);
      this.fault = fault;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
      if (!fault.on) {
        return super.write(bytes);
      }
      ByteBuffer part = bytes.duplicate();
      part.limit(Math.min(part.limit(), part.position() + fault.afterBytes));
      super.write(part);
      throw new IOException(fault.message);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      if (fault.on && fault.truncateFails) {
        throw new IOException(fault.message);
      }
      return super.truncate(size);
    }
  }
}
