package linkwright.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.cli.exchange.BookOfJob;
import linkwright.cli.exchange.CsvTable;
import linkwright.cli.exchange.TakenIn;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.shell.Appending;
import linkwright.shell.DrawerBook;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright take-in}: test pieces, tallies or stock out of comma-separated values. */
@Command(
    name = "take-in",
    mixinStandardHelpOptions = true,
    description = {
      "Enters the rows of a CSV file (RFC 4180): all of them, or none and what is wrong with them.",
      "Units stand in the headings, blank (mm), or in the cells; a decimal comma is heeded."
    },
    footer = {
      "",
      "Test pieces: blank, wire, length, width, inside, former tip, verdict, note, lot.",
      "Tallies: piece, stage, what (through, redo or scrap), count, reason.",
      "Stock: lot, what, metal, wire, length, mass, temper, batch, note.",
      "Example: linkwright take-in gate-chain pieces.csv"
    })
final class TakeInCommand implements Callable<Integer> {
  private static final String DRAWER = "drawer";

  /** More than that is no list from a bench. */
  private static final long MOST_BYTES = 4_000_000;

  private final Root root;

  @Parameters(index = "0", paramLabel = "WHERE", description = "The name of a job, or drawer.")
  private String where = "";

  @Parameters(index = "1", paramLabel = "FILE", description = "The CSV file, - for standard input.")
  private String file = "";

  @Option(names = "--try", description = "Only says what would be entered.")
  private boolean onlyTried;

  TakeInCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Library library = Library.load(root.home());
    root.here().err().sayAll(Located.all(library.problems()));
    Handbook handbook = Start.handbook(library, root.home());
    Read<Path> path = root.input(file);
    Read<String> text = path.flatMap(TakeInCommand::text);
    if (text instanceof Read.Bad<String> bad) {
      return root.wrong(bad.sentence());
    }
    String name = String.valueOf(path.orThrow().getFileName());
    CsvTable table = CsvTable.read(name, text.orThrow());
    if (where.equals(DRAWER)) {
      return enter(TakenIn.stock(name, table, handbook.reference()), Optional.empty());
    }
    Read<BookOfJob> book = BookOfJob.named(where, root.home(), handbook);
    if (book instanceof Read.Bad<BookOfJob> bad) {
      return root.wrong(bad.sentence());
    }
    return enter(job(name, table, book.orThrow()), Optional.of(book.orThrow().path()));
  }

  private static TakenIn job(String name, CsvTable table, BookOfJob book) {
    return table.columns().contains("stage")
        ? TakenIn.tallies(name, table, book.state(), book.handbook())
        : TakenIn.pieces(name, table, Standing.of(book.state(), book.handbook()));
  }

  private static Read<String> text(Path path) {
    try {
      if (!Files.isRegularFile(path)) {
        return Read.bad("There is no file " + path + ".");
      }
      if (Files.size(path) > MOST_BYTES) {
        return Read.bad(path + " is too long to be a list from a bench.");
      }
      return Read.good(Files.readString(path));
    } catch (CharacterCodingException otherwise) {
      return Read.bad(path + " is not UTF-8: save it as UTF-8.");
    } catch (IOException refused) {
      return Read.bad(path + " could not be read: " + refused.getMessage() + ".");
    }
  }

  private int enter(TakenIn taken, Optional<Path> book) {
    Surroundings here = root.here();
    if (!taken.problems().isEmpty()) {
      here.err().sayAll(Located.all(taken.problems()));
      here.err().say("Nothing was entered.");
      return Exit.PROBLEMS;
    }
    int rows = taken.facts().size();
    String count = rows + (rows == 1 ? " row" : " rows");
    if (onlyTried) {
      here.out().say(count + " can be entered. Nothing was entered.");
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
    here.out().say(count + " entered.");
    return Exit.GOOD;
  }
}
