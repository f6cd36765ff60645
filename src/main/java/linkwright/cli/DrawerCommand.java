package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import linkwright.shell.DrawerBook;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;
import linkwright.standing.stock.LotQuestions;
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

  @Option(
      names = "--metal",
      paramLabel = "METAL",
      description = "Its metal or solder; without it sterling.")
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

  @Option(names = "--even-so", description = "Enters what was asked about: it is so.")
  private boolean evenSo;

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
      List<String> questions = evenSo ? List.of() : questions(handbook, fact.orThrow());
      if (!questions.isEmpty()) {
        questions.forEach(here.err()::say);
        here.err().say("Nothing was entered. If it is so, say it again with --even-so.");
        return Exit.PROBLEMS;
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
      here.out().sayAll(new PlainLines(Act::words).of(root.inHerWords(parts)));
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
                                : arrived(handbook, t, l, g))));
  }

  private UnitStyle units() {
    return Choices.load(root.home()).user().units();
  }

  private static <T> Read<T> unless(Map<String, String> wrong, T fact) {
    return wrong.values().stream().findFirst().map(Read::<T>bad).orElse(Read.good(fact));
  }

  private Read<Fact> counted(Handbook handbook, OptionalDouble l, OptionalDouble g) {
    String name = count.orElseThrow();
    LotFact.LotCounted counted = new LotFact.LotCounted(name, l, g, "");
    return LotQuestions.lot(name, handbook.drawer())
        .map(lot -> unless(LotQuestions.wrong(counted, lot), (Fact) counted))
        .orElseGet(
            () ->
                Read.bad(
                    "There is no lot \""
                        + name
                        + "\" in the drawer: linkwright drawer lists them."));
  }

  private Read<Fact> arrived(
      Handbook handbook, OptionalDouble t, OptionalDouble l, OptionalDouble g) {
    Reference reference = handbook.reference();
    Read<Metal> found = reference.metal(metal);
    Optional<String> solder = reference.solder(metal).found().map(Solder::id);
    if (!found.isGood() && solder.isEmpty()) {
      return Read.bad(found.problem().orElse(""));
    }
    String what = found.isGood() ? (t.isPresent() ? "wire" : "metal") : "solder";
    LotFact.LotArrived arrived =
        new LotFact.LotArrived(
            came.orElseThrow(),
            what,
            found.map(Metal::id).found().or(() -> solder).orElseThrow(),
            t,
            temper,
            batch,
            l,
            g,
            "");
    return unless(LotQuestions.wrong(arrived, handbook.drawer(), units()), arrived);
  }

  private List<String> questions(Handbook handbook, Fact fact) {
    Reference reference = handbook.reference();
    if (fact instanceof LotFact.LotArrived arrived) {
      return List.copyOf(LotQuestions.ofCame(arrived, reference, units()).values());
    }
    return fact instanceof LotFact.LotCounted counted
        ? LotQuestions.lot(counted.lot(), handbook.drawer())
            .map(lot -> LotQuestions.ofCounted(counted, lot, reference, units()))
            .map(asked -> List.copyOf(asked.values()))
            .orElse(List.of())
        : List.of();
  }
}
