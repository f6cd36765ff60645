package linkwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Spec;

/**
 * {@code linkwright man}: the manual page, in the marks of man(7), made of the commands there are;
 * the build keeps it in a file.
 */
@Command(
    name = "man",
    mixinStandardHelpOptions = true,
    description = "Writes the manual page.",
    footer = {"", "Example: linkwright man | man -l -"})
final class ManCommand implements Callable<Integer> {
  private final Root root;

  @Spec private CommandSpec spec;

  ManCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() throws IOException {
    CommandLine line = spec.root().commandLine();
    StringBuilder page = new StringBuilder();
    page.append(".TH LINKWRIGHT 1 \"\" \"linkwright ").append(Root.version()).append("\"\n");
    page.append(".SH NAME\nlinkwright \\- a bench coach for soldered chain made by hand\n");
    page.append(".SH SYNOPSIS\n.B linkwright\n[OPTIONS] [COMMAND]\n");
    page.append(".SH DESCRIPTION\n");
    said(page, line.getCommandSpec().usageMessage().description());
    page.append(".SH OPTIONS\n");
    arguments(page, line.getCommandSpec());
    page.append(".SH COMMANDS\n");
    commands(page, line);
    page.append(".SH FILES\n");
    entry(page, "~/linkwright", "Jobs, drafts, settings and your own data; or LINKWRIGHT_HOME.");
    entry(page, "settings.yaml, bench.yaml, keys.yaml", "In it; linkwright file-keys tells them.");
    page.append(".SH ENVIRONMENT\n");
    entry(page, "LINKWRIGHT_HOME", "Your folder, in place of ~/linkwright.");
    entry(page, "NO_COLOR", "Without colours.");
    entry(page, "TERM", "With dumb the coach talks line by line.");
    page.append(".SH EXIT STATUS\n");
    entry(page, "0", "Good.");
    entry(page, "1", "What was asked for has problems, which are told.");
    entry(
        page,
        "2",
        "It was asked wrongly: a command, option, value, name or file that is not there.");
    entry(page, "128 and more", "A signal ended it: 128 and its number, such as 143 for TERM.");
    root.here().out().print(page.toString());
    return Exit.GOOD;
  }

  private static void commands(StringBuilder page, CommandLine line) {
    for (CommandLine command : line.getSubcommands().values()) {
      CommandSpec each = command.getCommandSpec();
      page.append(".SS ").append(escaped(each.qualifiedName())).append('\n');
      page.append(".nf\n");
      for (String text : command.getHelp().synopsis(0).stripTrailing().split("\n", -1)) {
        page.append(escaped(text.stripTrailing())).append('\n');
      }
      page.append(".fi\n.PP\n");
      said(page, each.usageMessage().description());
      arguments(page, each);
      page.append(".PP\n");
      said(page, each.usageMessage().footer());
      commands(page, command);
    }
  }

  private static void arguments(StringBuilder page, CommandSpec of) {
    for (ArgSpec argument : of.positionalParameters()) {
      entry(page, argument.paramLabel(), String.join(" ", argument.description()));
    }
    for (OptionSpec option : of.options()) {
      if (!option.usageHelp() && !option.versionHelp() && !option.inherited()) {
        String label = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
        entry(page, option.longestName() + label, String.join(" ", option.description()));
      }
    }
  }

  private static void entry(StringBuilder page, String what, String says) {
    page.append(".TP\n").append(escaped(what)).append('\n').append(escaped(says)).append('\n');
  }

  /** Sentences as a paragraph; an example stands on a line of its own. */
  private static void said(StringBuilder page, String... lines) {
    for (String line : lines) {
      if (line.isBlank()) {
        continue;
      }
      boolean example = line.contains("linkwright ") || line.startsWith("Example");
      page.append(example ? ".br\n" : "").append(escaped(line.strip())).append('\n');
    }
  }

  /**
   * A line that begins with a point or an apostrophe would be a mark of its own, and a sign for a
   * per cent stands twice in the texts of commands.
   */
  private static String escaped(String text) {
    String safe = text.replace("%%", "%").replace("\\", "\\\\").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }
}
