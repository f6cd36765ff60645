package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.PlanText;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.Teller;
import linkwright.coach.again.AgainContent;
import linkwright.coach.content.Part;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.JobState;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.shell.BookOfJob;
import linkwright.shell.NewBook;
import linkwright.shell.Start;
import linkwright.standing.CountedPlan;
import linkwright.standing.Handbook;
import linkwright.standing.JobPrices;
import linkwright.standing.Standing;
import linkwright.standing.again.MadeAgain;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright again JOB}: what a job comes to made again, and beginning it. */
@Command(
    name = "again",
    mixinStandardHelpOptions = true,
    description = {
      "What a job comes to made again, from what it settled: blank, formers, link, rings, loss.",
      "With --new NAME it is begun and lies in the tray; with --into FILE its plan is written."
    },
    footer = {"", "Example: linkwright again window-chain --length \"50 cm\" --new \"Longer\""})
final class AgainCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(paramLabel = "JOB", description = "The name of a job's book.")
  private String job = "";

  @Option(names = "--length", paramLabel = "LENGTH", description = "Another finished length.")
  private Optional<String> length = Optional.empty();

  @Option(names = "--metal", paramLabel = "METAL", description = "Another metal, by its id.")
  private Optional<String> metal = Optional.empty();

  @Option(names = "--wire", paramLabel = "SIZE", description = "Another thickness of wire.")
  private Optional<String> wire = Optional.empty();

  @Option(names = "--new", paramLabel = "NAME", description = "Begins the job of that name.")
  private Optional<String> name = Optional.empty();

  @Option(
      names = "--into",
      paramLabel = "FILE",
      description = "Writes the new plan into a plan file that is not there yet.")
  private Optional<String> into = Optional.empty();

  @Mixin private final AnswerRows answer = new AnswerRows();

  AgainCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Home home = root.home();
    Handbook handbook = Start.handbook(Library.load(home), home);
    Read<Path> path = BookOfJob.meant(job, home);
    Read<BookOfJob> book = BookOfJob.named(job, home, handbook);
    if (book instanceof Read.Bad<BookOfJob> bad) {
      if (!path.map(Files::isRegularFile).orElse(false)) {
        return root.wrong(bad.sentence());
      }
      root.here().err().say(bad.sentence());
      return Exit.PROBLEMS;
    }
    JobState earlier = book.orThrow().state();
    if (!earlier.course().closed()) {
      return root.wrong("Only a job that is closed is made again: close it at weigh in first.");
    }
    return again(book.orThrow(), handbook.forJob("", List.of()));
  }

  private Map<String, String> changes() {
    Map<String, String> changes = new LinkedHashMap<>();
    name.ifPresent(text -> changes.put(WishKeys.JOB, text));
    length.ifPresent(text -> changes.put(WishKeys.FINISHED, text));
    metal.ifPresent(text -> changes.put(WishKeys.METAL, text));
    wire.ifPresent(text -> changes.put(WishKeys.WIRE, text));
    return changes;
  }

  /** The earlier job teaches the next one, too. */
  private int again(BookOfJob book, Handbook next) {
    JobState earlier = book.state();
    Handbook handbook = book.handbook();
    Surroundings here = root.here();
    Choices choices = Choices.load(root.home());
    UnitStyle units = choices.user().units();
    MadeAgain again = MadeAgain.of(earlier, handbook, changes(), units);
    Standing standing = Standing.ofTyped(again.wish(), again.begun(earlier, next), next);
    CountedPlan counted = standing.counted().saidIn(units);
    Optional<String> wrong =
        counted.troubles().values().stream()
            .findFirst()
            .or(() -> Optional.of(counted.sentence()).filter(said -> !said.isEmpty()));
    if (wrong.isPresent()) {
      return root.wrong(wrong.get());
    }
    here.err().sayAll(Located.all(choices.problems()));
    List<Part> parts = new AgainContent(units, JobPrices.of(earlier, handbook)).of(again, standing);
    if (answer.forReading()) {
      String called = again.wish().getOrDefault(WishKeys.JOB, earlier.course().name());
      // What she called it stays as she wrote it.
      List<String> lines = PlanText.of(called, parts);
      here.out().say(lines.get(0));
      lines.stream().skip(1).forEach(line -> here.out().say(choices.user().words().show(line)));
    } else {
      answer.print(root, "again", parts);
    }
    Optional<String> routine = Optional.of(earlier.course().routine());
    int written = into.map(file -> write(file, routine, again.wish())).orElse(Exit.GOOD);
    return name.isPresent() && written == Exit.GOOD ? begin(again, book) : written;
  }

  private int write(String file, Optional<String> routine, Map<String, String> wish) {
    Read<Path> written = Root.path(file).flatMap(path -> PlanFile.write(path, routine, wish));
    return written.problem().map(root::wrong).orElse(Exit.GOOD);
  }

  private int begin(MadeAgain again, BookOfJob book) {
    Surroundings here = root.here();
    String device = Choices.load(root.home()).device(here, root.home());
    Read<String> begun =
        NewBook.begin(
            root.home(),
            device,
            here.clock(),
            name.orElseThrow(),
            again.facts(book.entries(), book.state()),
            book.handbook());
    if (begun instanceof Read.Bad<String> bad) {
      here.err().say(bad.sentence());
      return Exit.PROBLEMS;
    }
    Teller told = answer.forReading() ? here.out() : here.err();
    told.say("");
    told.say("Begun: " + begun.orThrow() + ".");
    return Exit.GOOD;
  }
}
