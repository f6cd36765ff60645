package linkwright.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.walk.Opening;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.shell.BookOfJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright rehearse}: a routine or a job walked dry. */
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = {
      "Walks a routine dry, forwards and back, its waits sixty times as fast.",
      "Nothing is entered; of a job it takes the sizes.",
      "It is walked through, on the screen or line by line, and answers nothing at once."
    },
    footer = {"", "Example: linkwright rehearse round-cable"})
final class RehearseCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(paramLabel = "ROUTINE|JOB", description = "A routine's id, or a job of the tray.")
  private String what = "";

  @Option(names = "--plain", description = "Line by line over standard input and output.")
  private boolean plain;

  RehearseCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Home home = root.home();
    Library library = Library.load(home);
    if (library.routines().containsKey(what)) {
      return root.start(
          plain, Optional.empty(), Optional.of(new Message.Led(PlaceId.REHEARSAL, what)));
    }
    Read<Opening> job =
        Opening.open(Optional.of(what), home, library, root.here().clock().instant());
    if (job instanceof Read.Bad<Opening>) {
      Optional<String> several = BookOfJob.meant(what, home).problem();
      if (several.isPresent()) {
        return root.wrong(several.get());
      }
      return root.wrong(RoutineNames.unknown(what, library) + " Nor is there a job of that name.");
    }
    return root.start(
        plain, job.orThrow().slug(), Optional.of(new Message.Led(PlaceId.REHEARSAL, "")));
  }
}
