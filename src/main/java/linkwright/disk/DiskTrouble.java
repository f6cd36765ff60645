package linkwright.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import java.util.Optional;

/** Says for a jeweller what a disk refuses to do. */
public final class DiskTrouble {
  /** A trouble that says itself what it is, as a whole sentence. */
  public interface Explained {
    /** What is wrong and what to do. */
    String sentence();
  }

  private DiskTrouble() {}

  /** Why a file cannot be read. */
  public static String reading(Path path, IOException trouble) {
    if (trouble instanceof NoSuchFileException) {
      return Files.isSymbolicLink(path) ? leadsToNothing(path) : "There is no file " + path + ".";
    }
    if (trouble instanceof AccessDeniedException) {
      return "You may not read " + path + ": ask whoever owns it, or change its permissions.";
    }
    return "The file " + path + " cannot be read: " + reason(trouble) + ".";
  }

  private static String leadsToNothing(Path link) {
    try {
      return link
          + " is a link to "
          + Files.readSymbolicLink(link)
          + ", where there is nothing: bring that back, or take the link away.";
    } catch (IOException gone) {
      return "There is no file " + link + ".";
    }
  }

  /** Why nobody can know whether a file is there; empty where that can be known. */
  public static Optional<String> toLookAt(Path path) {
    try {
      Files.readAttributes(path, BasicFileAttributes.class);
      return Optional.empty();
    } catch (AccessDeniedException denied) {
      return Optional.of(reading(path, denied));
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  /** Why a file cannot be written. */
  public static String writing(Path path, IOException trouble) {
    if (trouble instanceof Explained own) {
      return own.sentence();
    }
    if (reason(trouble).contains("Is a directory")) {
      return noFile(path);
    }
    String reason = reason(trouble);
    String lower = reason.toLowerCase(Locale.ROOT);
    if (lower.contains("no space left") || lower.contains("not enough space")) {
      return "The disk is full, nothing more was written to "
          + path
          + ": free some space and enter it again.";
    }
    if (lower.contains("quota")) {
      return "Your share of the disk is used up, nothing more was written to "
          + path
          + ": free some space and enter it again.";
    }
    if (lower.contains("read-only")) {
      return "The disk that holds " + path + " can only be read: nothing was written.";
    }
    if (trouble instanceof AccessDeniedException) {
      return "You may not write " + path + ": ask whoever owns it, or change its permissions.";
    }
    if (trouble instanceof NoSuchFileException || trouble instanceof NotDirectoryException) {
      return "The folder for " + path + " is not there any more: bring it back, then open again.";
    }
    if (trouble instanceof FileAlreadyExistsException) {
      return "Something else already stands at " + path + ": move it away or choose another name.";
    }
    return "The file " + path + " cannot be written: " + reason + ".";
  }

  /** Something that is no file stands where one should. */
  public static String noFile(Path path) {
    return "There is a folder, or something else that is no file, where "
        + path
        + " should be: move it away.";
  }

  private static String reason(IOException trouble) {
    String message = trouble.getMessage();
    if (message == null || message.isBlank()) {
      return "the system gives no reason";
    }
    return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
  }
}
