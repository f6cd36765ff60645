package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.content.Part;
import linkwright.coach.drawer.DrawerContent;
import linkwright.coach.keys.Act;
import linkwright.drawer.Drawer;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plain.PlainLines;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Read;
import linkwright.shell.DrawerBook;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code linkwright drawer}: wire and other metal on hand, by lot. */
@Command(
    name = "drawer",
    mixinStandardHelpOptions = true,
    description = {
      "Wire and other metal on hand across jobs, by lot, and the metal account.",
      "--came LOT enters what came; --count LOT sets a lot right by what the scale says."
    },
    footer = {"", "Example: linkwright drawer --came wire-9 --wire \"0.9 mm\" --length \"3 m\""})
final class DrawerCommand implements Callable<Integer> {
  private final Root root;

  @Option(names = "--came", paramLabel = "LOT", description = "What came, by your name for it.")
  private Optional<String> came = Optional.empty();

  @Option(names = "--count", paramLabel = "LOT", description = "A lot that was weighed.")
  private Optional<String> count = Optional.empty();

  @Option(names = "--metal", paramLabel = "METAL", description = "Its metal; without it sterling.")
  private String metal = "sterling";

  @Option(names = "--wire", paramLabel = "SIZE", description = "Its thickness, for wire.")
  private Optional<String> wire = Optional.empty();

  @Option(names = "--length", paramLabel = "LENGTH", description = "How long.")
  private Optional<String> length = Optional.empty();

  @Option(names = "--mass", paramLabel = "MASS", description = "How heavy.")
  private Optional<String> mass = Optional.empty();

  @Option(names = "--temper", paramLabel = "TEMPER", description = "soft or hard; without it soft.")
  private String temper = "soft";

  @Option(names = "--batch", paramLabel = "BATCH", description = "The maker's number.")
  private String batch = "";

  @Mixin private final AnswerRows answer = new AnswerRows();

  DrawerCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    List<String> unread = new ArrayList<>();
    Handbook handbook = Start.handbook(library, root.home(), unread);
    // What such a book took is not taken off here.
    here.err().sayAll(unread);
    boolean entered = came.isPresent() || count.isPresent();
    if (entered) {
      Read<Fact> fact = fact(handbook);
      if (fact instanceof Read.Bad<Fact> bad) {
        return root.wrong(bad.sentence());
      }
      String device = Choices.load(root.home()).device(here, root.home());
      Optional<String> unkept =
          DrawerBook.keep(root.home(), device, here.clock().instant(), fact.orThrow());
      if (unkept.isPresent()) {
        here.err().say(unkept.get());
        return Exit.PROBLEMS;
      }
      handbook = Start.handbook(library, root.home());
    }
    DrawerBook.problems(root.home()).forEach(here.err()::say);
    Drawer drawer = handbook.drawer();
    if (drawer.lots().isEmpty() && !DrawerBook.problems(root.home()).isEmpty()) {
      return Exit.PROBLEMS;
    }
    List<Part> parts =
        new DrawerContent(Choices.load(root.home()).user().units())
            .of(
                drawer,
                -1,
                TrayReading.of(root.home(), handbook, here.clock().instant()),
                handbook.reference());
    if (answer.forReading()) {
      here.out().sayAll(new PlainLines(Act::words).of(parts));
    } else {
      answer.print(root, "drawer", parts);
    }
    // What was entered was entered, whatever else is told: a script must not enter it again.
    return entered || (DrawerBook.problems(root.home()).isEmpty() && unread.isEmpty())
        ? Exit.GOOD
        : Exit.PROBLEMS;
  }

  private Read<Fact> fact(Handbook handbook) {
    if (mass.isEmpty() && length.isEmpty()) {
      return Read.bad("Give --mass or --length, such as --mass \"20 g\".");
    }
    Read<OptionalDouble> mm =
        length
            .map(text -> Length.readSize(text).map(each -> OptionalDouble.of(each.mm())))
            .orElse(Read.good(OptionalDouble.empty()));
    Read<OptionalDouble> grams =
        mass.map(text -> Mass.read(text).map(each -> OptionalDouble.of(each.grams())))
            .orElse(Read.good(OptionalDouble.empty()));
    Read<OptionalDouble> thick =
        wire.map(text -> Length.readWire(text).map(each -> OptionalDouble.of(each.mm())))
            .orElse(Read.good(OptionalDouble.empty()));
    return mm.flatMap(
        l ->
            grams.flatMap(
                g ->
                    thick.flatMap(
                        t ->
                            count.isPresent()
                                ? counted(handbook, l, g)
                                : handbook
                                    .reference()
                                    .metal(metal)
                                    .map(of -> arrived(of.id(), t, l, g)))));
  }

  private Read<Fact> counted(Handbook handbook, OptionalDouble l, OptionalDouble g) {
    String lot = count.orElseThrow();
    return handbook.drawer().lots().stream().anyMatch(each -> each.id().equals(lot))
        ? Read.good(new LotFact.LotCounted(lot, l, g, ""))
        : Read.bad("There is no lot \"" + lot + "\" in the drawer: linkwright drawer lists them.");
  }

  private Fact arrived(String of, OptionalDouble t, OptionalDouble l, OptionalDouble g) {
    return new LotFact.LotArrived(
        came.orElseThrow(), t.isPresent() ? "wire" : "metal", of, t, temper, batch, l, g, "");
  }
}
