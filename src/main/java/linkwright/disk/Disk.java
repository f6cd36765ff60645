package linkwright.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/** Writes that are on the disk, not only in the system's memory, when they return. */
public final class Disk {
  private Disk() {}

  /** Makes a file that must not exist yet; if the disk refuses, nothing of it is left. */
  public static void create(Path path, byte[] bytes) throws IOException {
    write(path, bytes, true);
    syncFolder(path);
  }

  /**
   * Makes a file that must not exist yet, whole or not at all: even a program that dies meanwhile
   * leaves nothing of that name.
   */
  public static void createWhole(Path path, byte[] bytes) throws IOException {
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(path.toString());
    }
    Path fresh = fresh(path, bytes, true);
    try {
      FailPoint.reached("new-file-written");
      Files.move(fresh, path);
    } finally {
      Files.deleteIfExists(fresh);
    }
    syncFolder(path);
  }

  /**
   * Puts a whole new text in a file's place: at any moment either the old or the new is there. A
   * link gives way to a file: what it led to, wherever that is, stays as it was.
   */
  public static void replace(Path path, byte[] bytes) throws IOException {
    replace(path, bytes, true);
    syncFolder(path);
  }

  /** The same, its name not waited for; after a power cut it may be the old text. */
  public static void replaceSoon(Path path, byte[] bytes) throws IOException {
    replace(path, bytes, true);
  }

  /** The same without waiting for the disk; after a power cut it may be the old or nothing. */
  public static void replaceUnsynced(Path path, byte[] bytes) throws IOException {
    replace(path, bytes, false);
  }

  /** Why a folder that is not there cannot be made, by what is above it; empty if it can. */
  public static Optional<String> whyNoFolder(Path folder) {
    Path above = folder.toAbsolutePath().normalize();
    while (above.getParent() != null && !Files.exists(above)) {
      above = above.getParent();
    }
    if (!Files.isDirectory(above)) {
      return Optional.of(above + " is not a folder.");
    }
    return Files.isWritable(above)
        ? Optional.empty()
        : Optional.of("nothing can be written into " + above + ".");
  }

  /** Makes a folder and those above it that are not there, for their owner alone. */
  public static void folders(Path folder) throws IOException {
    Files.createDirectories(folder, attributes(folder, "rwx------"));
  }

  /** What a new file is made with where the system knows it: it is its owner's alone. */
  public static FileAttribute<?>[] privately(Path path) {
    return attributes(path, "rw-------");
  }

  private static FileAttribute<?>[] attributes(Path path, String permissions) {
    boolean known = path.getFileSystem().supportedFileAttributeViews().contains("posix");
    return known
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }

  private static void replace(Path path, byte[] bytes, boolean synced) throws IOException {
    Path fresh = fresh(path, bytes, synced);
    FailPoint.reached("replacement-written");
    try {
      Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException noAtomicMove) {
      Files.move(fresh, path, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A file that waits beside another for its name. */
  private static Path fresh(Path path, byte[] bytes, boolean synced) throws IOException {
    Path fresh = path.resolveSibling(path.getFileName() + ".new");
    Files.deleteIfExists(fresh);
    write(fresh, bytes, synced);
    return fresh;
  }

  private static void write(Path path, byte[] bytes, boolean synced) throws IOException {
    Set<StandardOpenOption> options =
        Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    boolean done = false;
    FileChannel channel = FileChannel.open(path, options, privately(path));
    try (channel) {
      writeFully(channel, bytes);
      if (synced) {
        channel.force(true);
      }
      done = true;
    } finally {
      if (!done) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** All the bytes, however many writes it takes. */
  public static void writeFully(FileChannel channel, byte[] bytes) throws IOException {
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
