package linkwright.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.files.Library;
import linkwright.lesson.Roster;
import linkwright.quantity.Read;
import linkwright.shell.StudentBooks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright lesson}: a student is asked before she is told. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = {
      "Asks what comes next, what can hurt, what to look for, and the sums of a routine.",
      "What is missed comes back, in the lesson and on later days, until it is known.",
      "It is talked through; what came of it: linkwright student NAME --as json."
    },
    footer = {"", "Example: linkwright lesson round-cable --student Mara --plain"})
final class LessonCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(paramLabel = "ROUTINE", description = "What is to be learned.")
  private String routine = "";

  @Option(
      names = "--student",
      paramLabel = "NAME",
      description = "Whose book it goes into; without it your own. A new name begins a book.")
  private Optional<String> student = Optional.empty();

  @Option(names = "--plain", description = "Line by line over standard input and output.")
  private boolean plain;

  LessonCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Library library = Library.load(root.home());
    if (!library.routines().containsKey(routine)) {
      return root.wrong(RoutineNames.unknown(routine, library));
    }
    if (student.map(String::isBlank).orElse(false)) {
      return root.wrong("--student needs a name behind it, such as --student Mara.");
    }
    Read<String> id =
        student
            .map(name -> StudentBooks.named(root.home(), name))
            .orElseGet(() -> Read.good(Roster.OWN));
    if (id instanceof Read.Bad<String> bad) {
      root.here().err().say(bad.sentence());
      return Exit.PROBLEMS;
    }
    return root.start(
        plain,
        Optional.empty(),
        Optional.of(new Message.Led(PlaceId.LESSON, routine + " " + id.orThrow())));
  }
}
