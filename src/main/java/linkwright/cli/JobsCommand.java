package linkwright.cli;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.ClosedWords;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code linkwright jobs}: the tray as text. */
@Command(
    name = "jobs",
    mixinStandardHelpOptions = true,
    description = "Lists the jobs at hand, where each stands and what waits.",
    footer = {"", "Example: linkwright jobs --as csv"})
final class JobsCommand implements Callable<Integer> {
  private final Root root;

  private static final List<String> COLUMNS =
      List.of("book", "name", "stands", "waits", "closed", "put-away");

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  @Option(names = "--all", description = "Those that were put away too.")
  private boolean all;

  JobsCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library);
    Settings settings = Choices.load(root.home()).settings().in(ZoneId.systemDefault());
    List<TrayJob> tray =
        TrayReading.of(root.home(), handbook, here.clock().instant()).stream()
            .filter(job -> all || !job.away())
            .toList();
    List<String> problems = TrayReading.problems(root.home());
    here.err().sayAll(problems);
    if (as.orThrow() == OutForm.TEXT) {
      text(here, tray, problems, settings);
    } else {
      here.out().print(as.orThrow().written("jobs", rows(tray, settings), COLUMNS));
    }
    boolean unread = tray.stream().anyMatch(job -> job.stands().startsWith("cannot be read"));
    return problems.isEmpty() && !unread ? Exit.GOOD : Exit.PROBLEMS;
  }

  private static void text(
      Surroundings here, List<TrayJob> tray, List<String> problems, Settings settings) {
    if (tray.isEmpty() && problems.isEmpty()) {
      here.out().say("The tray is empty.");
    }
    for (TrayJob job : tray) {
      here.out().say(job.slug() + ": " + job.name() + "; " + ClosedWords.stands(job, settings));
      job.waits().forEach(wait -> here.out().say("  waits: " + wait));
    }
  }

  private static List<Map<String, Object>> rows(List<TrayJob> tray, Settings settings) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (TrayJob job : tray) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("book", job.slug());
      row.put("name", job.name());
      row.put("stands", ClosedWords.stands(job, settings));
      row.put("waits", String.join("; ", job.waits()));
      row.put("closed", job.closed());
      row.put("put-away", job.away());
      rows.add(row);
    }
    return rows;
  }
}
