package linkwright.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Who may write a book: a lock of the operating system on a file beside it, which goes with the
 * process that holds it, however that ends. The lock file itself stays: a leftover one blocks
 * nobody, and taking it away would let two hold "the" lock on two different files.
 */
final class BookLock implements Closeable {
  /**
   * Asked before the lock file is opened: on some systems closing a second channel on a file drops
   * the lock of the first.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path name;
  private final FileChannel channel;

  private BookLock(Path name, FileChannel channel) {
    this.name = name;
    this.channel = channel;
  }

  /** The lock on a book, or empty if someone else writes it now. */
  static Optional<BookLock> take(Path book) throws IOException {
    Path real = book.toRealPath();
    if (!HELD.add(real)) {
      return Optional.empty();
    }
    boolean taken = false;
    FileChannel channel = null;
    try {
      channel =
          FileChannel.open(
              beside(real, ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      taken = lock(channel);
      return taken ? Optional.of(new BookLock(real, channel)) : Optional.empty();
    } finally {
      if (!taken) {
        HELD.remove(real);
        if (channel != null) {
          channel.close();
        }
      }
    }
  }

  private static boolean lock(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException alreadyOurs) {
      return false;
    }
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
