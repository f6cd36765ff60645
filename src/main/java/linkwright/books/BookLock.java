package linkwright.books;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.disk.FailPoint;

/**
 * Who may write a book: a lock of the operating system on a file beside it, which goes with the
 * process that holds it, however that ends. The lock file itself stays: a leftover one blocks
 * nobody, and taking it away would let two hold "the" lock on two different files.
 */
final class BookLock implements Closeable {
  private static final Set<OpenOption> OPTIONS =
      Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);

  static final BookWriter.ChannelOpening LOCK_FILE =
      path -> {
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)
            && !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
          throw new NotAFile(path);
        }
        return FileChannel.open(path, OPTIONS, Disk.privately(path));
      };

  /** A folder, a link or the like stands where the lock's file should. */
  static final class NotAFile extends IOException implements DiskTrouble.Explained {
    private final String sentence;

    NotAFile(Path path) {
      super(path + " is no ordinary file");
      sentence = DiskTrouble.noFile(path);
    }

    @Override
    public String sentence() {
      return sentence;
    }
  }

  /**
   * Asked before the lock file is opened: on some systems closing a second channel on a file drops
   * the lock of the first.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path name;
  private final FileChannel channel;
  private final boolean ofSystem;

  private BookLock(Path name, FileChannel channel, boolean ofSystem) {
    this.name = name;
    this.channel = channel;
    this.ofSystem = ofSystem;
  }

  /** The lock on a book, or empty if someone else writes it now. */
  static Optional<BookLock> take(Path book, BookWriter.ChannelOpening opening) throws IOException {
    Path real = book.toRealPath();
    if (!HELD.add(real)) {
      return Optional.empty();
    }
    boolean taken = false;
    FileChannel channel = null;
    try {
      channel = opening.open(beside(real, ".lock"));
      FailPoint.reached("lock-made");
      Optional<Boolean> ofSystem = lock(channel);
      FailPoint.reached("lock-taken");
      taken = ofSystem.isPresent();
      return taken ? Optional.of(new BookLock(real, channel, ofSystem.get())) : Optional.empty();
    } finally {
      if (!taken) {
        HELD.remove(real);
        if (channel != null) {
          channel.close();
        }
      }
    }
  }

  /** Whether the system holds the lock; empty if somebody else has it. */
  private static Optional<Boolean> lock(FileChannel channel) {
    try {
      FileLock lock = channel.tryLock();
      return lock == null ? Optional.empty() : Optional.of(true);
    } catch (OverlappingFileLockException alreadyOurs) {
      return Optional.empty();
    } catch (IOException noLocksHere) {
      // Some network disks know no locks. Better a book without a guard than no book at all.
      return Optional.of(false);
    }
  }

  /** Whether other programs are kept out too; false on a disk that knows no locks. */
  boolean ofSystem() {
    return ofSystem;
  }

  /** The name of a file beside a book: the book's own name without its ending, and another. */
  static Path beside(Path book, String ending) {
    String name = book.getFileName().toString();
    String stem = name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
    return book.resolveSibling(stem + ending);
  }

  /** Closes, where a failure to close would change nothing. */
  void release() {
    try {
      close();
    } catch (IOException closedAnyway) {
      HELD.remove(name);
    }
  }

  @Override
  public void close() throws IOException {
    try {
      channel.close();
    } finally {
      HELD.remove(name);
    }
  }
}
