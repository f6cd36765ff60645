package linkwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.cli.exchange.BookOfJob;
import linkwright.cli.exchange.JobTables;
import linkwright.cli.exchange.PlanYaml;
import linkwright.cli.exchange.ShelfTables;
import linkwright.cli.forms.OutForm;
import linkwright.files.Library;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.nearest.ChainChoices;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright export}: a job, the drawer or the hands as tables for other programs. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Writes a job, the drawer or the hands for other programs: all tables, or one as CSV.",
      "Units stand in the headings. A job's export holds nothing of another job."
    },
    footer = {"", "Example: linkwright export gate-chain --table test-pieces --as csv"})
final class ExportCommand implements Callable<Integer> {
  private static final String DRAWER = "drawer";
  private static final String HANDS = "hands";

  private final Root root;

  @Parameters(paramLabel = "WHAT", description = "The name of a job's book, drawer or hands.")
  private String what = "";

  @Option(names = "--as", paramLabel = "FORM", description = "csv, json or yaml; yaml.")
  private String form = "yaml";

  @Option(
      names = "--table",
      paramLabel = "TABLE",
      description = {
        "One table: of a job card, plan, test-pieces, trial-lengths, tallies, wire, weighed;",
        "of the drawer lots, accounts; of the hands stages, times. CSV needs one."
      })
  private Optional<String> table = Optional.empty();

  ExportCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as =
        OutForm.named(form)
            .flatMap(
                read ->
                    read == OutForm.TEXT
                        ? Read.bad("An export is for other programs: --as csv, json or yaml.")
                        : Read.good(read));
    return as.flatMap(read -> tables().flatMap(tables -> written(tables, read)))
        .map(
            text -> {
              root.here().out().print(text);
              return Exit.GOOD;
            })
        .found()
        .orElseGet(
            () ->
                root.wrong(
                    as.problem()
                        .or(() -> tables().problem())
                        .or(() -> tables().flatMap(all -> written(all, as.orThrow())).problem())
                        .orElse("")));
  }

  private Read<Map<String, List<Map<String, Object>>>> tables() {
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library, root.home());
    return switch (what) {
      case DRAWER -> Read.good(ShelfTables.ofDrawer(handbook.drawer(), handbook.reference()));
      case HANDS -> Read.good(ShelfTables.ofHands(handbook.hands()));
      default -> BookOfJob.named(what, root.home(), handbook).map(ExportCommand::ofJob);
    };
  }

  private static Map<String, List<Map<String, Object>>> ofJob(BookOfJob book) {
    Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
    Standing standing = Standing.of(book.state(), book.handbook());
    JobTables.of(book.entries(), book.state())
        .forEach(
            (name, rows) -> {
              tables.put(name, rows);
              if (name.equals("card")) {
                tables.put("plan", plan(standing, book));
              }
            });
    return tables;
  }

  private static List<Map<String, Object>> plan(Standing standing, BookOfJob book) {
    return standing.counted().plan().isEmpty()
        ? List.of()
        : List.of(
            PlanYaml.of(
                standing,
                ChainChoices.of(book.state().course().wish(), book.state(), book.handbook()),
                book.handbook().reference()));
  }

  private Read<String> written(Map<String, List<Map<String, Object>>> tables, OutForm as) {
    if (table.isEmpty() && as == OutForm.CSV) {
      return Read.bad(
          "CSV holds one table: write --table with one of "
              + String.join(", ", tables.keySet())
              + ".");
    }
    if (table.isEmpty()) {
      return Read.good(as.written(tables));
    }
    List<Map<String, Object>> rows = tables.get(table.get());
    return rows == null
        ? Read.bad(
            "There is no table \""
                + table.get()
                + "\" here; there are "
                + String.join(", ", tables.keySet())
                + "."
                + Nearest.of(table.get(), tables.keySet())
                    .map(near -> " Did you mean " + near + "?")
                    .orElse(""))
        : Read.good(as.written(table.get(), rows));
  }
}
