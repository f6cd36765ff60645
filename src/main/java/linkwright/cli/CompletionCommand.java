package linkwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.files.Library;
import linkwright.schema.FileSchemas;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code linkwright completion bash|zsh}: a script by which a shell completes what is typed. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = "Writes a script by which your shell completes commands and options.",
    footer = {
      "",
      "Example: linkwright completion bash \\",
      "           > ~/.local/share/bash-completion/completions/linkwright",
      "         source <(linkwright completion zsh)"
    })
final class CompletionCommand implements Callable<Integer> {
  private static final String ZSH =
      "autoload -U +X compinit && compinit\nautoload -U +X bashcompinit && bashcompinit\n";

  private final Root root;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "bash|zsh", description = "The shell.")
  private String shell = "";

  CompletionCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (!shell.equals("bash") && !shell.equals("zsh")) {
      return root.wrong("“" + shell + "” is no shell that is known here: write bash or zsh.");
    }
    CommandLine line = spec.root().commandLine();
    List<String> routines = List.copyOf(Library.load(root.home()).routines().keySet());
    offer(line, "lesson", routines);
    offer(line, "rehearse", routines);
    offer(line, "schema", FileSchemas.kinds());
    offer(line, "completion", List.of("bash", "zsh"));
    offer(line, "help", List.copyOf(line.getSubcommands().keySet()));
    // Where no word of ours fits, a file may be meant: the shell's own completion goes on then.
    String script =
        AutoComplete.bash("linkwright", line).replaceAll("(?m)^ *type compopt .*\\R", "");
    root.here().out().print(shell.equals("zsh") ? ZSH + script : script);
    return Exit.GOOD;
  }

  /** Offers those words for what a command is about. */
  private static void offer(CommandLine line, String command, List<String> words) {
    CommandSpec offering = line.getSubcommands().get(command).getCommandSpec();
    PositionalParamSpec about = offering.positionalParameters().get(0);
    offering.remove(about);
    offering.add(about.toBuilder().completionCandidates(words).build());
  }
}
