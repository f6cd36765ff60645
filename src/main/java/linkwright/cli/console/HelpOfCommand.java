package linkwright.cli.console;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** {@code linkwright help}: of a command, of one of its own, or of the program. */
@Command(
    name = "help",
    helpCommand = true,
    mixinStandardHelpOptions = true,
    description = "Tells what a command does and how it is written; without one, what there is.",
    footer = {"", "Example: linkwright help plan", "         linkwright help reckon pull"})
public final class HelpOfCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "COMMAND",
      description = "The command, and behind it one of its own.")
  private List<String> names = List.of();

  @Override
  public Integer call() {
    CommandLine of = spec.root().commandLine();
    for (String name : names) {
      CommandLine next = of.getSubcommands().get(name);
      if (next == null) {
        throw new UnmatchedArgumentException(of, List.of(name));
      }
      of = next;
    }
    of.usage(spec.root().commandLine().getOut(), of.getColorScheme());
    return Exit.GOOD;
  }
}
