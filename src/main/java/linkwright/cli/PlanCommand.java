package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.bench.OwnBench;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.PlanText;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.UnsaidRoutine;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.keys.Act;
import linkwright.coach.plan.ChainContent;
import linkwright.coach.plan.PartContent;
import linkwright.coach.whatif.WhatIfContent;
import linkwright.exchange.PlanYaml;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.JobState;
import linkwright.plain.PlainLines;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import linkwright.routine.ChainEnds;
import linkwright.routine.Routine;
import linkwright.routine.Wording;
import linkwright.shell.BookOfJob;
import linkwright.shell.Start;
import linkwright.standing.CountedPlan;
import linkwright.standing.Handbook;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;
import linkwright.standing.asked.Questions;
import linkwright.standing.nearest.ChainChoice;
import linkwright.standing.nearest.ChainChoices;
import linkwright.standing.reach.WhatIf;
import linkwright.standing.typed.RoutineFits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code linkwright plan FILE}: what a plan file comes to; {@code linkwright plan JOB}: what a
 * job's plan comes to as the job stands now.
 */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "Works a plan file out: counts, lengths, wire, weight, how to cut.",
      "The name of a job in place of a file: its plan, counted anew as the job stands now."
    },
    footer = {"", "Example: linkwright plan my-plan.yaml --as json"})
final class PlanCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "FILE",
      description = "A plan file, - for standard input, or the name of a job's book.")
  private String file = "";

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  @Option(
      names = "--or",
      paramLabel = "CHANGES",
      description = {
        "A variant beside it, up to three, such as",
        "--or \"metal=copper, wire=1 mm\""
      })
  private List<String> variants = new ArrayList<>();

  @Option(
      names = "--from",
      paramLabel = "WHAT",
      description = {
        "The longest chain and the heaviest wire from what there is, given once for each:",
        "--from \"wire=420 mm, 260 mm\" --from \"metal=20 g\"",
        "--from money=90 --from hours=6"
      })
  private List<String> from = new ArrayList<>();

  @Option(
      names = "--no-bench",
      description = "As if nobody had worked here: without your bench and hands.")
  private boolean noBench;

  @Option(
      names = "--into",
      paramLabel = "NEW",
      description = "Writes the plan as it was typed into a plan file that is not there yet.")
  private Optional<String> into = Optional.empty();

  PlanCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Read<Path> path = root.input(file).flatMap(this::readable);
    return path.problem().map(root::wrong).orElseGet(() -> plan(path.orThrow(), as.orThrow()));
  }

  /** A plan file where there is one of that name, else the job's book. */
  private Read<Path> readable(Path path) {
    Optional<String> none = PlanFile.none(path, file);
    if (none.isPresent()) {
      return Read.bad(none.get());
    }
    if (Files.exists(path)) {
      return Read.good(path);
    }
    return BookOfJob.meant(file, root.home())
        .flatMap(
            book ->
                Files.exists(book)
                    ? Read.good(book)
                    : Read.bad(
                        "There is no file " + path + "." + BookOfJob.near(file, root.home())));
  }

  /**
   * A plan with what it was made of: the wish as typed and the job it stands in.
   *
   * @param routine the routine that was said; empty where it was left out
   */
  private record Planned(
      String name,
      Optional<String> routine,
      Map<String, String> wish,
      JobState state,
      Standing standing,
      Handbook handbook) {}

  private int plan(Path path, OutForm as) {
    Surroundings here = root.here();
    Choices choices = Choices.load(root.home());
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(choices.problems()));
    here.err()
        .sayAll(noBench ? Located.all(library.problems()) : Located.hers(library, root.home()));
    Handbook handbook =
        noBench
            ? Start.handbook(library).with(OwnBench.NONE)
            : Start.handbook(library, root.home());
    boolean job = path.getParent() != null && path.getParent().equals(root.home().jobs());
    Optional<Planned> planned = job ? ofJob(path, handbook) : ofFile(path, library, handbook);
    if (planned.isEmpty()) {
      return Exit.PROBLEMS;
    }
    Standing standing = planned.get().standing();
    if (into.isPresent() && planned.get().wish().isEmpty()) {
      here.err().say(told(path) + ": This job has no plan yet: there is nothing to write.");
      return Exit.PROBLEMS;
    }
    Optional<String> unwritten =
        into.flatMap(
            file ->
                Root.path(file)
                    .flatMap(
                        to -> PlanFile.write(to, planned.get().routine(), planned.get().wish()))
                    .problem());
    if (unwritten.isPresent()) {
      return root.wrong(unwritten.get());
    }
    if (standing.counted().part().isPresent() && variants.isEmpty() && from.isEmpty()) {
      return pieces(planned.get(), choices, as);
    }
    if (standing.counted().plan().isEmpty()) {
      here.err().say(told(path) + ": " + why(standing));
      return Exit.PROBLEMS;
    }
    // Nothing is kept here, so what would be asked before it is kept is told.
    Optional<Routine> routine = handbook.routine(planned.get().state().course().routine());
    boolean suits = RoutineFits.told(standing).isEmpty();
    if (planned.get().routine().isEmpty()
        && UnsaidRoutine.matters(planned.get().wish(), handbook)) {
      here.err().say(told(path) + ": " + UnsaidRoutine.says(routine, suits));
    }
    Questions.ofPlan(
            standing,
            routine.filter(known -> suits || planned.get().routine().isPresent()),
            JobTraits.of(planned.get().wish(), library.reference()),
            choices.user().units())
        .values()
        .forEach(question -> here.err().say(told(path) + ": is this right? " + question));
    if (!variants.isEmpty()) {
      return compare(planned.get(), choices, as);
    }
    if (!from.isEmpty()) {
      return FromWhatThereIs.tell(
          root, from, planned.get().wish(), planned.get().state(), planned.get().handbook(), as);
    }
    if (as != OutForm.TEXT) {
      List<ChainChoice> nearest =
          ChainChoices.of(planned.get().wish(), planned.get().state(), planned.get().handbook());
      here.out()
          .print(
              as.written(
                  PlanYaml.of(planned.get().name(), standing, nearest, library.reference())));
    } else {
      List<Part> parts =
          new ArrayList<>(
              new ChainContent(choices.user().units(), choices.user().words(), library.reference())
                  .of(standing));
      howLinksAdd(planned.get(), choices).ifPresent(parts::add);
      here.out().sayAll(PlanText.of(planned.get().name(), parts));
    }
    return Exit.GOOD;
  }

  /** What is no chain: how many, and what its texts will be filled with. */
  private int pieces(Planned planned, Choices choices, OutForm as) {
    if (as != OutForm.TEXT) {
      root.here().out().print(as.written(PlanYaml.ofPieces(planned.name(), planned.standing())));
      return Exit.GOOD;
    }
    List<Part> parts =
        PartContent.of(
            planned.standing().counted().part().orElseThrow(),
            planned.standing(),
            planned.standing().walked(),
            choices.user().units(),
            choices.user().words());
    String title = planned.standing().walked().map(Routine::title).orElse("");
    root.here().out().sayAll(PlanText.of(planned.name().isBlank() ? title : planned.name(), parts));
    return Exit.GOOD;
  }

  /**
   * Folded or turned into its neighbours a link adds less than its inside: the routine says how.
   */
  private static Optional<Part> howLinksAdd(Planned planned, Choices choices) {
    return planned
        .standing()
        .walked()
        .filter(routine -> routine.ends() == ChainEnds.LINKS)
        .filter(any -> RoutineFits.told(planned.standing()).isEmpty())
        .filter(routine -> !planned.wish().containsKey(WishKeys.LINK_INSIDE))
        .map(
            routine ->
                Prose.says(
                    Wording.fill(
                        "Reckoned by the routine: %s. %s"
                            .formatted(routine.title(), routine.plan()),
                        Map.of(),
                        choices.user().units(),
                        choices.user().words())));
  }

  private int compare(Planned planned, Choices choices, OutForm as) {
    List<Map<String, String>> changes = new ArrayList<>();
    for (String variant : variants) {
      Map<String, String> one = new LinkedHashMap<>();
      for (String each : variant.split(",", -1)) {
        String[] pair = each.split("=", 2);
        if (pair.length < 2 || !WishKeys.ALL.contains(pair[0].strip())) {
          return root.wrong(
              "\""
                  + each.strip()
                  + "\" changes no key of a plan: write --or \"wire=1 mm, ring.inside=3 mm\".");
        }
        one.put(pair[0].strip(), pair[1].strip());
      }
      changes.add(one);
    }
    List<Part> parts =
        new WhatIfContent(choices.user().units())
            .of(WhatIf.of(planned.wish(), planned.state(), planned.handbook(), changes));
    if (as == OutForm.TEXT) {
      root.here().out().sayAll(new PlainLines(Act::words).of(root.inHerWords(parts)));
    } else {
      root.here().out().print(AnswerRows.written(as, "compared", parts));
    }
    return Exit.GOOD;
  }

  private static String told(Path path) {
    return Located.isStandardInput(path) ? "standard input" : path.toString();
  }

  private static String why(Standing standing) {
    CountedPlan counted = standing.counted();
    return !counted.sentence().isEmpty()
        ? counted.sentence()
        : counted.troubles().values().stream()
            .findFirst()
            .orElse("This job has no plan of a chain yet.");
  }

  private Optional<Planned> ofFile(Path path, Library library, Handbook handbook) {
    PlanFile read = PlanFile.read(path, library);
    if (!read.problems().isEmpty()) {
      root.here().err().sayAll(Located.all(read.problems()));
      return Optional.empty();
    }
    String name = read.texts().getOrDefault(WishKeys.JOB, "");
    JobState state =
        read.routine()
            .map(routine -> Standing.newJob(read.texts(), handbook, routine))
            .orElseGet(() -> Standing.newJob(read.texts(), handbook));
    return Optional.of(
        new Planned(
            name, read.routine(), read.texts(), state, Standing.of(state, handbook), handbook));
  }

  private Optional<Planned> ofJob(Path book, Handbook handbook) {
    String file = book.getFileName().toString();
    String slug = file.substring(0, file.length() - ".yaml".length());
    Read<BookOfJob> read = BookOfJob.named(slug, root.home(), handbook);
    read.problem().ifPresent(root.here().err()::say);
    return read.map(
            job ->
                new Planned(
                    job.state().course().name(),
                    Optional.of(job.state().course().routine()),
                    job.state().course().wish(),
                    job.state(),
                    Standing.of(job.state(), job.handbook()),
                    job.handbook()))
        .found();
  }
}
