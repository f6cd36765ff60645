package linkwright.cli;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.concurrent.Callable;
import linkwright.books.DeviceId;
import linkwright.books.Examination;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Device;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.files.Checking;
import linkwright.quantity.Problem;
import linkwright.terminal.Displays;
import linkwright.terminal.Environment;
import picocli.CommandLine.Command;

/** {@code linkwright doctor}: how the folder, the disk, the books and the terminal are. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    description =
        "Tries your folder, its disk, its books and this terminal, and says how they are.")
final class DoctorCommand implements Callable<Integer> {
  private final Root root;

  DoctorCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() throws IOException {
    Surroundings here = root.here();
    here.out()
        .say(
            "Linkwright "
                + Root.version()
                + ", Java "
                + System.getProperty("java.version", "unknown")
                + ", "
                + here.environment().system()
                + ".");
    here.out().say(Examination.formats());
    DeviceId devices = Device.kept(here);
    Examination examination = Examination.of(root.home(), devices, here.clock().instant());
    for (Examination.Examined finding : examination.findings()) {
      here.out().say((finding.good() ? "good:  " : "wrong: ") + finding.sentence());
    }
    int others = otherFiles();
    here.out()
        .say(
            others == 0
                ? "good:  Your other files: nothing is wrong in them."
                : "wrong: Your other files: linkwright check tells what is wrong, in "
                    + others
                    + (others == 1 ? " place." : " places."));
    here.out().say(terminal(here.environment()));
    here.out().sayAll(Displays.told(here.environment()));
    return examination.good() && others == 0 ? Exit.GOOD : Exit.PROBLEMS;
  }

  /** What is wrong in settings, keys, bench, routines and all else that is no book. */
  private int otherFiles() {
    Set<Problem> wrong = new LinkedHashSet<>(Checking.written(root.home()));
    wrong.addAll(Choices.load(root.home()).problems());
    return wrong.size();
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
