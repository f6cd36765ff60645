package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright class}: the students' books of a folder at a glance. */
@Command(
    name = "class",
    mixinStandardHelpOptions = true,
    description = {
      "Shows the students whose books lie in a folder: who is at which step as of when,",
      "what is got wrong most, who waits for a mark, the room's last flame."
    },
    footer = {"", "Example: linkwright class /media/class --plain"})
final class ClassCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "Where their folders are; without it your own.")
  private Optional<String> folder = Optional.empty();

  @Option(names = "--plain", description = "Line by line over standard input and output.")
  private boolean plain;

  ClassCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<Path> path = folder.map(Root::path).orElseGet(() -> Read.good(root.home().folder()));
    if (path instanceof Read.Bad<Path> bad) {
      return root.wrong(bad.sentence());
    }
    if (!Files.isDirectory(path.orThrow())) {
      return root.wrong("There is no folder " + path.orThrow() + ".");
    }
    return root.start(
        plain,
        Optional.empty(),
        Optional.of(
            new Message.Led(PlaceId.CLASS_ROOM, path.orThrow().toAbsolutePath().toString())));
  }
}
