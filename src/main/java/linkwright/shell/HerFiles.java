package linkwright.shell;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.Home;
import linkwright.quantity.Read;

/**
 * Files that she names: written for other programs, or read from them. A bare name lies in a folder
 * of her own; what is Linkwright's own is never written over.
 */
public final class HerFiles {
  /** More than that is no list from a bench. */
  private static final long MOST_BYTES = 4_000_000;

  private HerFiles() {}

  static Message.WrittenOut write(Home home, Effect.WriteOut effect) {
    Read<Path> path = path(home, effect.folder(), effect.file());
    if (path instanceof Read.Bad<Path> bad) {
      return refused(bad.sentence());
    }
    Path file = path.orThrow();
    if (isOwn(home, effect.folder(), file)) {
      return refused(
          file
              + " would lie among Linkwright's own files: write a bare name, or a folder outside "
              + home.folder()
              + ".");
    }
    boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    if (there && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return refused(file + " is no ordinary file: take another name.");
    }
    try {
      Disk.folders(file.getParent());
      byte[] bytes = effect.text().getBytes(StandardCharsets.UTF_8);
      if (there && effect.over()) {
        Disk.replace(file, bytes);
      } else {
        Disk.create(file, bytes);
      }
      return new Message.WrittenOut(Message.WrittenOut.FileFate.WRITTEN, file.toString());
    } catch (FileAlreadyExistsException already) {
      return already.getFile().equals(file.toString())
          ? new Message.WrittenOut(Message.WrittenOut.FileFate.THERE, file.toString())
          : refused(already.getFile() + " is no folder.");
    } catch (IOException failed) {
      return refused(DiskTrouble.writing(file, failed));
    }
  }

  private static Message.WrittenOut refused(String sentence) {
    return new Message.WrittenOut(Message.WrittenOut.FileFate.REFUSED, sentence);
  }

  /** Inside her folder only the folder for such files may be written to, links followed. */
  private static boolean isOwn(Home home, String folder, Path file) {
    Path own = real(home.folder().toAbsolutePath().normalize());
    Path there = real(file);
    return there.startsWith(own) && !there.startsWith(own.resolve(folder));
  }

  /** The path with the links of what is there already followed. */
  private static Path real(Path path) {
    Path above = path;
    while (above.getParent() != null && !Files.exists(above)) {
      above = above.getParent();
    }
    try {
      return above.toRealPath().resolve(above.relativize(path)).normalize();
    } catch (IOException unknown) {
      return path;
    }
  }

  private static Read<Path> path(Home home, String folder, String typed) {
    try {
      Path path =
          typed.startsWith("~/")
              ? Path.of(System.getProperty("user.home")).resolve(typed.substring(2))
              : Path.of(typed);
      Path whole = path.isAbsolute() ? path : home.folder().resolve(folder).resolve(path);
      return Read.good(whole.toAbsolutePath().normalize());
    } catch (InvalidPathException no) {
      return Read.bad("“" + typed + "” is no path: write a file's name.");
    }
  }

  /** A file to read: of that folder of hers, else as the path says. */
  static Read<Path> found(Home home, String folder, String typed) {
    return path(home, folder, typed)
        .map(
            own -> {
              Path here = Path.of(typed).toAbsolutePath();
              return Files.exists(own) || !Files.exists(here) ? own : here;
            });
  }

  /** The text of a file of rows; a sentence where it cannot be one. */
  public static Read<String> text(Path path) {
    try {
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        return Read.bad(path + " is no ordinary file.");
      }
      if (!Files.exists(path)) {
        return Read.bad("There is no file " + path + ".");
      }
      if (Files.size(path) > MOST_BYTES) {
        return Read.bad(path + " is too long to be a list from a bench.");
      }
      return Read.good(Files.readString(path));
    } catch (CharacterCodingException otherwise) {
      return Read.bad(path + " is not UTF-8: save it as UTF-8.");
    } catch (IOException failed) {
      return Read.bad(DiskTrouble.reading(path, failed));
    }
  }
}
