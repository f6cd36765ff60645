package linkwright.cli;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.content.Part;
import linkwright.coach.keys.Act;
import linkwright.coach.ownbench.OwnBenchContent;
import linkwright.exchange.forms.OutForm;
import linkwright.files.BenchFile;
import linkwright.files.Library;
import linkwright.plain.PlainLines;
import linkwright.quantity.Read;
import linkwright.reference.Reference;
import linkwright.routine.Routine;
import linkwright.shell.Start;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code linkwright bench}: what is hers whatever the job. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    description = {
      "Your bench: tools, pickle, prices, habits. They are taken in every plan.",
      "--set changes bench.yaml and leaves your comments in it as they are."
    },
    footer = {
      "",
      "Keys: kerf, persons, plate, formers.NAME, flame.fuel, pickle.wait,",
      "prices.currency, prices.hour, prices.metal-per-g.METAL, losses.all, fire-watch;",
      "linkwright file-keys tells them all.",
      "Example: linkwright bench --set \"kerf=0.3 mm\""
    })
final class BenchCommand implements Callable<Integer> {
  private final Root root;

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description = "Changes a value; KEY= takes it out.")
  private List<String> set = new ArrayList<>();

  @Mixin private final AnswerRows answer = new AnswerRows();

  BenchCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Surroundings here = root.here();
    Map<String, String> changes = new LinkedHashMap<>();
    for (String each : set) {
      int equals = each.indexOf('=');
      if (equals < 1) {
        return root.wrong("\"" + each + "\" sets nothing: write --set \"kerf=0.3 mm\".");
      }
      changes.put(each.substring(0, equals).strip(), each.substring(equals + 1).strip());
    }
    if (!changes.isEmpty()) {
      Library before = Library.load(root.home());
      Reference reference = before.reference();
      Collection<Routine> routines = before.routines().values();
      Optional<String> wrong = BenchFile.wrong(root.home(), changes, reference, routines);
      if (wrong.isPresent()) {
        return root.wrong(wrong.get());
      }
      Read<BenchFile> changed = BenchFile.change(root.home(), changes, reference, routines);
      if (changed instanceof Read.Bad<BenchFile> bad) {
        here.err().say(bad.sentence());
        return Exit.PROBLEMS;
      }
    }
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.bench().problems()));
    if (!changes.isEmpty() && !library.bench().problems().isEmpty()) {
      here.err().say("Written into bench.yaml: " + String.join("; ", set) + ". Mend the rest too.");
      return Exit.PROBLEMS;
    }
    Choices choices = Choices.load(root.home());
    List<Part> parts =
        new OwnBenchContent(
                choices.user().units(),
                here.clock().instant().atZone(ZoneId.systemDefault()).toLocalDate())
            .of(Start.handbook(library, root.home()));
    if (answer.forReading()) {
      here.out().sayAll(new PlainLines(Act::words).of(root.inHerWords(parts)));
    } else {
      answer.print(root, "bench", parts);
    }
    return library.bench().problems().isEmpty() ? Exit.GOOD : Exit.PROBLEMS;
  }
}
