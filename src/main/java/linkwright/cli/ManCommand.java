package linkwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * {@code linkwright man}: the manual page, in the marks of man(7); the build keeps it in a file.
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
    StringBuilder page = new StringBuilder();
    page.append(".TH LINKWRIGHT 1 \"\" \"linkwright ").append(Root.version()).append("\"\n");
    page.append(".SH NAME\nlinkwright \\- a bench coach for soldered chain made by hand\n");
    page.append(".SH SYNOPSIS\n.B linkwright\n[OPTIONS] [COMMAND]\n");
    page.append(".SH DESCRIPTION\n");
    usage(page, spec.root().commandLine());
    page.append(".SH COMMANDS\n");
    commands(page, spec.root().commandLine(), "linkwright");
    root.here().out().print(page.toString());
    return Exit.GOOD;
  }

  private static void commands(StringBuilder page, CommandLine line, String before) {
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              page.append(".SS ").append(before).append(' ').append(name).append('\n');
              usage(page, command);
              commands(page, command, before + " " + name);
            });
  }

  private static void usage(StringBuilder page, CommandLine line) {
    page.append(".nf\n");
    for (String text : line.getUsageMessage(CommandLine.Help.Ansi.OFF).split("\n", -1)) {
      page.append(escaped(text.stripTrailing())).append('\n');
    }
    page.append(".fi\n");
  }

  /** A line that begins with a point or an apostrophe would be a mark of its own. */
  private static String escaped(String text) {
    String safe = text.replace("\\", "\\\\").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }
}
