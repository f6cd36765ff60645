package linkwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.exchange.CsvTable;
import linkwright.exchange.TakenIn;
import linkwright.files.Library;
import linkwright.job.JobState;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.shell.Appending;
import linkwright.shell.BookOfJob;
import linkwright.shell.DrawerBook;
import linkwright.shell.HerFiles;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright take-in}: test pieces, tallies or lots out of comma-separated values. */
@Command(
    name = "take-in",
    mixinStandardHelpOptions = true,
    description = {
      "Enters the rows of a CSV file (RFC 4180): all of them, or none and what is wrong with them.",
      "Units stand in the headings, blank (mm), or in the cells; a decimal comma is heeded.",
      "Rows that were exported from the same job are known by number and when, and left out.",
      "Rows that say what stands there already are asked about."
    },
    footer = {
      "",
      "Test pieces: blank, wire, length, width, inside, former tip, verdict, note, lot.",
      "Tallies: piece, stage, what (through, redo or scrap), count, reason, back to (of a redo).",
      "Lots: lot, what, metal, wire, length, mass, temper, batch, note.",
      "Example: linkwright take-in gate-chain pieces.csv"
    })
final class TakeInCommand implements Callable<Integer> {
  private static final String DRAWER = "drawer";

  private final Root root;

  @Parameters(index = "0", paramLabel = "WHERE", description = "The name of a job, or drawer.")
  private String where = "";

  @Parameters(index = "1", paramLabel = "FILE", description = "The CSV file, - for standard input.")
  private String file = "";

  @Option(names = "--try", description = "Only says what would be entered.")
  private boolean onlyTried;

  @Option(names = "--even-so", description = "Enters rows too that were asked about: it is so.")
  private boolean evenSo;

  TakeInCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Library library = Library.load(root.home());
    root.here().err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library, root.home());
    Read<Path> path = root.input(file);
    Read<String> text = path.flatMap(HerFiles::text);
    if (text instanceof Read.Bad<String> bad) {
      return root.wrong(bad.sentence());
    }
    String name = String.valueOf(path.orThrow().getFileName());
    CsvTable table = CsvTable.read(name, text.orThrow());
    UnitStyle units = Choices.load(root.home()).user().units();
    if (where.equals(DRAWER)) {
      return enter(
          TakenIn.stock(name, table, handbook.drawer(), handbook.reference(), units),
          "the drawer",
          Optional.empty());
    }
    Read<BookOfJob> book = BookOfJob.named(where, root.home(), handbook);
    if (book instanceof Read.Bad<BookOfJob> bad) {
      return root.wrong(bad.sentence());
    }
    JobState state = book.orThrow().state();
    if (state.course().closed()) {
      return root.wrong(TakenIn.CLOSED);
    }
    Handbook own = book.orThrow().handbook();
    return enter(
        TakenIn.job(
            name, table, book.orThrow().entries(), state, Standing.of(state, own), own, units),
        state.course().name() + " (book " + book.orThrow().slug() + ")",
        Optional.of(book.orThrow().path()));
  }

  private int enter(TakenIn taken, String into, Optional<Path> book) {
    Surroundings here = root.here();
    if (!taken.problems().isEmpty()) {
      here.err().sayAll(Located.all(taken.problems()));
      here.err().sayAll(taken.asked());
      here.err().say("Nothing was entered.");
      return Exit.PROBLEMS;
    }
    String count = taken.count();
    if (taken.known() > 0) {
      here.out().say(taken.leftOut());
    }
    if (taken.facts().isEmpty()) {
      here.out().say("Nothing was entered.");
      return Exit.GOOD;
    }
    here.err().sayAll(taken.asked());
    if (!taken.asked().isEmpty() && !evenSo) {
      here.err().say("Nothing was entered. If it is so, say it again with --even-so.");
      return Exit.PROBLEMS;
    }
    if (onlyTried) {
      here.out().say(count + " can be entered into " + into + ". Nothing was entered.");
      return Exit.GOOD;
    }
    String device = Choices.load(root.home()).device(here, root.home());
    Optional<String> unkept =
        book.isPresent()
            ? Appending.to(book.get(), device, here.clock().instant(), taken.facts())
            : DrawerBook.keep(root.home(), device, here.clock().instant(), taken.facts());
    if (unkept.isPresent()) {
      here.err().say(unkept.get());
      return Exit.PROBLEMS;
    }
    here.out().say(count + " entered into " + into + ".");
    return Exit.GOOD;
  }
}
