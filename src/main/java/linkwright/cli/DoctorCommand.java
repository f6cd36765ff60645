package linkwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import linkwright.books.DeviceId;
import linkwright.books.Examination;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Device;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Checking;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.terminal.Displays;
import linkwright.terminal.Environment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code linkwright doctor}: how the folder, the disk, the books and the terminal are. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    description =
        "Tries your folder, its disk, its books and this terminal, and says how they are.",
    footer = {"", "Example: linkwright doctor --as json"})
final class DoctorCommand implements Callable<Integer> {
  private final Root root;

  @Mixin private final AnswerRows answer = new AnswerRows();

  DoctorCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() throws IOException {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Surroundings here = root.here();
    DeviceId devices = Device.kept(here);
    Examination examination = Examination.of(root.home(), devices, here.clock().instant());
    int others = otherFiles();
    List<Map<String, Object>> rows = new ArrayList<>();
    rows.add(row("", program(here)));
    rows.add(row("", Examination.formats()));
    examination
        .findings()
        .forEach(each -> rows.add(row(each.good() ? "good" : "wrong", each.sentence())));
    rows.add(row("", Start.remembered(root.home())));
    rows.add(row(others == 0 ? "good" : "wrong", others(others)));
    rows.add(row("", terminal(here.environment())));
    Displays.told(here.environment()).forEach(told -> rows.add(row("", told)));
    if (answer.forReading()) {
      rows.forEach(row -> here.out().say(line(row)));
    } else {
      here.out().print(answer.form().orThrow().written("doctor", rows));
    }
    return examination.good() && others == 0 ? Exit.GOOD : Exit.PROBLEMS;
  }

  /** What is wrong in settings, keys, bench, routines and all else that is no book. */
  private int otherFiles() {
    Set<Problem> wrong = new LinkedHashSet<>(Checking.written(root.home()));
    wrong.addAll(Choices.load(root.home()).problems());
    return wrong.size();
  }

  private static String others(int wrong) {
    return wrong == 0
        ? "Your other files: nothing is wrong in them."
        : "Your other files: linkwright check tells what is wrong, in "
            + wrong
            + (wrong == 1 ? " place." : " places.");
  }

  private static Map<String, Object> row(String how, String says) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("how", how);
    row.put("says", says);
    return row;
  }

  private static String line(Map<String, Object> row) {
    String how = String.valueOf(row.get("how"));
    return (how.isEmpty() ? "" : how.equals("good") ? "good:  " : "wrong: ") + row.get("says");
  }

  private static String program(Surroundings here) throws IOException {
    return "Linkwright "
        + Root.version()
        + ", Java "
        + System.getProperty("java.version", "unknown")
        + ", "
        + here.environment().system()
        + ".";
  }

  private static String terminal(Environment environment) {
    String kind = environment.variables().getOrDefault("TERM", "");
    return (environment.terminal() ? "This is a terminal" : "No terminal is here")
        + (kind.isEmpty() ? "" : ", of the kind " + kind)
        + (environment.isUtf8()
            ? "; its language settings know all letters."
            : "; its language settings are not UTF-8, so plain letters are written.");
  }
}
