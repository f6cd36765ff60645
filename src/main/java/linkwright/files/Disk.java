package linkwright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes that are on the disk, not only in the system's memory, when they return. */
final class Disk {
  private Disk() {}

  /** Makes a file that must not exist yet; if the disk refuses, nothing of it is left. */
  static void create(Path path, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      writeFully(channel, bytes);
      channel.force(true);
    } catch (FileAlreadyExistsException notOurs) {
      throw notOurs;
    } catch (IOException refused) {
      Files.deleteIfExists(path);
      throw refused;
    }
    syncFolder(path);
  }

  /**
   * Puts a whole new text in a file's place: at any moment either the old or the new is there. A
   * link gives way to a file: what it led to, wherever that is, stays as it was.
   */
  static void replace(Path path, byte[] bytes) throws IOException {
    Path fresh = path.resolveSibling(path.getFileName() + ".new");
    Files.deleteIfExists(fresh);
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      writeFully(channel, bytes);
      channel.force(true);
    }
    try {
      Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException noAtomicMove) {
      Files.move(fresh, path, StandardCopyOption.REPLACE_EXISTING);
    }
    syncFolder(path);
  }

  static void writeFully(FileChannel channel, byte[] bytes) throws IOException {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    while (buffer.hasRemaining()) {
      channel.write(buffer);
    }
  }

  /** So that the new name itself outlives a power cut; not every system can do it. */
  static void syncFolder(Path path) {
    Path folder = path.toAbsolutePath().getParent();
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException cannot) {
      // Windows cannot open a folder; its file system keeps the name by itself.
      return;
    }
  }
}
