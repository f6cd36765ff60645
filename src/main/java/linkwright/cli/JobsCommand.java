package linkwright.cli;

import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.ClosedWords;
import linkwright.files.Library;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;

/** {@code linkwright jobs}: the tray as text. */
@Command(
    name = "jobs",
    mixinStandardHelpOptions = true,
    description = "Lists the jobs at hand, where each stands and what waits.")
final class JobsCommand implements Callable<Integer> {
  private final Root root;

  JobsCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library);
    Settings settings = Choices.load(root.home()).settings().in(ZoneId.systemDefault());
    List<TrayJob> tray = TrayReading.of(root.home(), handbook, here.clock().instant());
    List<String> problems = TrayReading.problems(root.home());
    here.err().sayAll(problems);
    if (tray.isEmpty() && problems.isEmpty()) {
      here.out().say("The tray is empty.");
    }
    for (TrayJob job : tray) {
      here.out().say(job.slug() + ": " + job.name() + "; " + ClosedWords.stands(job, settings));
      job.waits().forEach(wait -> here.out().say("  waits: " + wait));
    }
    boolean unread = tray.stream().anyMatch(job -> job.stands().startsWith("cannot be read"));
    return problems.isEmpty() && !unread ? Exit.GOOD : Exit.PROBLEMS;
  }
}
