package linkwright.cli;

import java.nio.file.Files;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.exchange.Exported;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.shell.BookOfJob;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
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

  @Option(names = "--as", paramLabel = "FORM", description = "csv, json or yaml; without it yaml.")
  private String form = "yaml";

  @Option(
      names = "--table",
      paramLabel = "TABLE",
      description = {
        "One table. Of a job: card, plan, test-pieces, trial-lengths, tallies, wire, weighed;",
        "of the drawer: lots, accounts; of the hands: stages, times. CSV needs one."
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
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Read<Exported> tables = tables();
    if (tables instanceof Read.Bad<Exported> bad) {
      boolean there = Files.isRegularFile(root.home().jobs().resolve(what + ".yaml"));
      int wrong = root.wrong(bad.sentence());
      return there ? Exit.PROBLEMS : wrong;
    }
    Read<String> text = tables.orThrow().text(table.orElse(""), as.orThrow());
    if (text instanceof Read.Bad<String> bad) {
      return root.wrong(bad.sentence());
    }
    root.here().out().print(text.orThrow());
    return Exit.GOOD;
  }

  private Read<Exported> tables() {
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library, root.home());
    return switch (what) {
      case DRAWER -> Read.good(Exported.ofDrawer(handbook));
      case HANDS -> Read.good(Exported.ofHands(handbook));
      default ->
          BookOfJob.named(what, root.home(), handbook)
              .map(book -> Exported.ofJob(book.entries(), book.state(), book.handbook()));
    };
  }
}
