package linkwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;

/** A file to start from; what is there already stays as it is. */
final class NewFile {
  private NewFile() {}

  static int write(Surroundings here, Path file, String text) {
    try {
      if (file.getParent() != null) {
        Files.createDirectories(file.getParent());
      }
      Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException there) {
      here.err().say(there.getFile() + " is there already, and stays as it is: take another name.");
      return Exit.PROBLEMS;
    } catch (IOException refused) {
      here.err().say(file + " could not be written: " + refused.getMessage() + ".");
      return Exit.PROBLEMS;
    }
    here.out().say("Written: " + file);
    here.out().say("Change it in any text editor, then run: linkwright check " + file);
    return Exit.GOOD;
  }
}
