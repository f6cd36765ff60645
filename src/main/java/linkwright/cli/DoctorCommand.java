package linkwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import linkwright.books.Examination;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
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
    Examination examination = Examination.of(root.home(), here.clock().instant());
    for (Examination.Examined finding : examination.findings()) {
      here.out().say((finding.good() ? "good:  " : "wrong: ") + finding.sentence());
    }
    here.out().say(terminal(here.environment()));
    return examination.good() ? Exit.GOOD : Exit.PROBLEMS;
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
