package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.plan.ChainContent;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright plan FILE}: what a plan file comes to. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Works a plan file out: counts, lengths, wire, weight, how to cut.")
final class PlanCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(paramLabel = "FILE", description = "A plan file.")
  private String file = "";

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description = "text (for reading) or yaml (for scripts); text.")
  private String form = "text";

  PlanCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    String as = form.toLowerCase(Locale.ROOT);
    if (!as.equals("text") && !as.equals("yaml")) {
      return root.wrong("\"" + form + "\" is no form of a plan: write --as text or --as yaml.");
    }
    Read<Path> path = Root.path(file).flatMap(PlanCommand::readable);
    return path.problem().map(root::wrong).orElseGet(() -> plan(path.orThrow(), as));
  }

  private static Read<Path> readable(Path path) {
    if (Files.isDirectory(path)) {
      return Read.bad(path + " is a folder: name the plan file in it.");
    }
    return Files.exists(path) ? Read.good(path) : Read.bad("There is no file " + path + ".");
  }

  private int plan(Path path, String as) {
    Surroundings here = root.here();
    Choices choices = Choices.load(root.home());
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(choices.problems()));
    here.err().sayAll(Located.all(library.problems()));
    PlanFile read = PlanFile.read(path, library);
    if (!read.problems().isEmpty() || read.wish().isEmpty()) {
      here.err().sayAll(Located.all(read.problems()));
      return Exit.PROBLEMS;
    }
    Read<Plan> plan = Planning.plan(read.wish().get());
    if (plan instanceof Read.Bad<Plan> bad) {
      here.err().say(path + ": " + bad.sentence());
      return Exit.PROBLEMS;
    }
    if (as.equals("yaml")) {
      here.out().print(YamlOut.of(PlanYaml.of(plan.orThrow(), library.reference())));
    } else {
      here.out()
          .sayAll(
              PlanText.of(
                  read.texts().getOrDefault(WishKeys.JOB, ""),
                  new ChainContent(
                          choices.user().units(), choices.user().words(), library.reference(), true)
                      .of(plan.orThrow())));
    }
    return Exit.GOOD;
  }
}
