package linkwright.books;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Objects;
import java.util.zip.CRC32C;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.disk.FailPoint;

/**
 * The end of a job book, where bytes are added: all of them and synced, or none. Knows how long the
 * book is and which file it is, so that it notices when somebody else has had a hand in it.
 */
final class BookWriter implements Closeable {
  /** Somebody else wrote, replaced or cut the file. */
  static final class ChangedMeanwhile extends IOException implements DiskTrouble.Explained {
    ChangedMeanwhile(Path path) {
      super(path + " was changed by another program since it was opened here");
    }

    @Override
    public String sentence() {
      return getMessage() + ". Nothing was written; trying again reads it anew.";
    }
  }

  /** Everything was written, but neither synced nor taken back: it may be there or not. */
  static final class Uncertain extends IOException implements DiskTrouble.Explained {
    private final String path;

    Uncertain(Path path, IOException why) {
      super("it is not known what stands in " + path, why);
      this.path = path.toString();
    }

    @Override
    public String sentence() {
      return "It is not known whether this was kept: the disk failed while it was written to "
          + path
          + " and again while it was taken back. Look in the book when the job is opened again,"
          + " before you enter it a second time.";
    }
  }

  /** Opens the end of a file; given its own so that a test can play a full disk. */
  interface ChannelOpening {
    FileChannel open(Path path) throws IOException;
  }

  static final ChannelOpening APPENDING =
      path -> FileChannel.open(path, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS);

  private final Path path;
  private final ChannelOpening opening;
  private final Object fileKey;
  private FileChannel channel;
  private long length;
  private boolean leftovers;
  private FileTime changed;
  private final CRC32C content = new CRC32C();

  private BookWriter(
      Path path,
      ChannelOpening opening,
      FileChannel channel,
      BasicFileAttributes file,
      byte[] known) {
    this.path = path;
    this.opening = opening;
    this.channel = channel;
    this.fileKey = key(file);
    this.length = file.size();
    this.changed = file.lastModifiedTime();
    content.update(known);
  }

  /**
   * Opens the end of a book.
   *
   * @param known what stands in it, as it was read
   */
  static BookWriter open(Path path, ChannelOpening opening, byte[] known) throws IOException {
    FileChannel channel = opening.open(path);
    boolean opened = false;
    try {
      BookWriter writer = new BookWriter(path, opening, channel, attributes(path), known);
      opened = true;
      return writer;
    } finally {
      if (!opened) {
        channel.close();
      }
    }
  }

  /** How long the book is, in bytes. */
  long length() {
    return length;
  }

  /** Adds bytes and waits until they are on the disk; after a failure the book is as it was. */
  void append(byte[] bytes) throws IOException {
    // An interrupt would close the channel under the write; it is kept for whoever it was meant.
    boolean interrupted = Thread.interrupted();
    try {
      try {
        write(bytes);
      } catch (ClosedChannelException interruptedWhileWriting) {
        interrupted |= Thread.interrupted();
        channel = opening.open(path);
        write(bytes);
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private void write(byte[] bytes) throws IOException {
    if (leftovers) {
      cutTo(length);
    }
    FailPoint.reached("before-write");
    requireUnchanged();
    boolean whole = false;
    try {
      leftovers = true;
      Disk.writeFully(channel, bytes);
      whole = true;
      FailPoint.reached("after-write");
      channel.force(false);
      FailPoint.reached("after-sync");
      changed = requireLength(length + bytes.length).lastModifiedTime();
    } catch (IOException trouble) {
      boolean back = takenBack();
      if (whole && !back) {
        throw new Uncertain(path, trouble);
      }
      throw trouble;
    }
    length += bytes.length;
    content.update(bytes);
    leftovers = false;
  }

  /** Takes away what stands after some place; only ever a torn end, never an entry. */
  void cutTo(long newLength) throws IOException {
    channel.truncate(newLength);
    channel.force(true);
    length = newLength;
    leftovers = false;
    changed = attributes(path).lastModifiedTime();
    content.reset();
    content.update(Files.readAllBytes(path));
  }

  private boolean takenBack() {
    try {
      if (Objects.equals(key(attributes(path)), fileKey)) {
        cutTo(length);
        return true;
      }
    } catch (IOException stillInTrouble) {
      // Tried again before the next write; until then the check of the cut line gives it away.
      leftovers = true;
    }
    return false;
  }

  /** What somebody else wrote over it shows even where its length is the same. */
  private void requireUnchanged() throws IOException {
    FileTime now = requireLength(length).lastModifiedTime();
    if (!now.equals(changed)) {
      CRC32C found = new CRC32C();
      found.update(Files.readAllBytes(path));
      if (found.getValue() != content.getValue()) {
        throw new ChangedMeanwhile(path);
      }
      changed = now;
    }
  }

  private BasicFileAttributes requireLength(long wanted) throws IOException {
    BasicFileAttributes now = attributes(path);
    if (now.size() != wanted || !Objects.equals(key(now), fileKey)) {
      throw new ChangedMeanwhile(path);
    }
    return now;
  }

  private static BasicFileAttributes attributes(Path path) throws IOException {
    return Files.readAttributes(path, BasicFileAttributes.class);
  }

  /** Windows gives no key; there the open channel itself keeps the file from being replaced. */
  private static Object key(BasicFileAttributes file) {
    return file.fileKey() == null ? "" : file.fileKey();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
