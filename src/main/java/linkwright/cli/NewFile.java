package linkwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;

/** A file to start from; what is there already stays as it is. */
final class NewFile {
  private NewFile() {}

  /** Writes it for its owner alone; {@code more} is said beside where it is. */
  static int write(Surroundings here, Path file, String text, String... more) {
    try {
      Path whole = file.toAbsolutePath();
      Disk.folders(whole.getParent());
      Disk.create(whole, text.getBytes(StandardCharsets.UTF_8));
    } catch (FileAlreadyExistsException there) {
      here.err().say(there.getFile() + " is there already, and stays as it is: take another name.");
      return Exit.PROBLEMS;
    } catch (IOException refused) {
      here.err().say(DiskTrouble.writing(file, refused));
      return Exit.PROBLEMS;
    }
    here.out().say("Written: " + file);
    here.out().sayAll(List.of(more));
    here.out().say("Change it in any text editor, then run: linkwright check " + file);
    return Exit.GOOD;
  }
}
