package linkwright.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.walk.Opening;
import linkwright.cli.walk.Walk;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright walk}: a job opened at once, on a screen or line by line. */
@Command(
    name = "walk",
    mixinStandardHelpOptions = true,
    description = "Opens a job; with --plain line by line, for screen readers and scripts.",
    footer = {
      "",
      "Within it, help tells what you can type.",
      "Example: linkwright walk \"Window chain\"",
      "         linkwright walk --new \"Anna's bracelet\" --plan my-plan.yaml"
    })
final class WalkCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "JOB",
      arity = "0..1",
      description = "A job's name in the tray, or its book; else the one last worked on.")
  private Optional<String> job = Optional.empty();

  @Option(names = "--plain", description = "Line by line over standard input and output.")
  private boolean plain;

  @Option(names = "--new", paramLabel = "NAME", description = "Begins a job of that name.")
  private Optional<String> name = Optional.empty();

  @Option(
      names = "--routine",
      paramLabel = "ID",
      description = "With --new: the routine to go by; by the plan's pattern, or scroll-and-ring.")
  private Optional<String> routine = Optional.empty();

  @Option(names = "--plan", paramLabel = "FILE", description = "With --new: its plan file.")
  private Optional<String> plan = Optional.empty();

  WalkCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (name.isPresent() && job.isPresent()) {
      return root.wrong("Name a job that there is, or begin one with --new NAME; not both.");
    }
    if (name.isEmpty() && (routine.isPresent() || plan.isPresent())) {
      return root.wrong("--routine and --plan go with --new NAME, which begins a job.");
    }
    Home home = root.home();
    if (plain || root.here().environment().isDumb()) {
      Starting.reading(root.here());
    }
    Library library = Library.load(home);
    Read<Opening> opening =
        name.map(begun -> Opening.begin(begun, routine, plan, library))
            .orElseGet(() -> Opening.open(job, home, library, root.here().clock().instant()));
    if (opening instanceof Read.Bad<Opening> bad) {
      return root.wrong(bad.sentence());
    }
    Opening found = opening.orThrow();
    if (!found.problems().isEmpty()) {
      root.here().err().sayAll(Located.all(found.problems()));
      return Exit.PROBLEMS;
    }
    Choices choices = Choices.load(home);
    boolean screen = !plain && root.here().environment().terminal();
    if (screen && found.begun().isPresent()) {
      return Walk.begun(root.here(), home, choices, library, found.begun().get())
          .map(slug -> root.start(false, Optional.of(slug)))
          .orElse(Exit.PROBLEMS);
    }
    if (plain || name.isPresent()) {
      root.here().err().sayAll(Located.all(choices.problems()));
      root.here().err().sayAll(Located.all(library.problems()));
      return Walk.run(root.here(), home, choices, library, found);
    }
    return root.start(false, found.slug());
  }
}
