package linkwright.cli;

import java.nio.file.InvalidPathException;
import linkwright.cli.console.BadName;
import linkwright.cli.console.Exit;
import linkwright.cli.console.HelpOfCommand;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.TraceFile;
import linkwright.cli.console.WrongUse;
import linkwright.cli.reckon.ReckonCommand;
import picocli.CommandLine;

/** The commands that are typed behind {@code linkwright}. */
public final class Commands {
  private static final int WIDTH = 80;

  private Commands() {}

  /** Runs a command and answers with its exit code. */
  public static int run(Surroundings here, String... arguments) {
    CommandLine line = line(here);
    try {
      return line.execute(arguments);
    } catch (Error fault) {
      // The command line's own handler is given exceptions alone.
      Root root = line.getCommand();
      here.err().say(TraceFile.keep(root.home(), fault, here.clock().instant()));
      return Exit.PROBLEMS;
    }
  }

  /** All commands there are. */
  static CommandLine line(Surroundings here) {
    Root root = new Root(here);
    CommandLine line = new CommandLine(root);
    line.addSubcommand(new PlanCommand(root));
    line.addSubcommand(new AgainCommand(root));
    line.addSubcommand(new HandsCommand(root));
    line.addSubcommand(new BenchCommand(root));
    line.addSubcommand(new DrawerCommand(root));
    line.addSubcommand(new ExportCommand(root));
    line.addSubcommand(new TakeInCommand(root));
    line.addSubcommand(new WalkCommand(root));
    line.addSubcommand(new RehearseCommand(root));
    line.addSubcommand(new LessonCommand(root));
    line.addSubcommand(new StudentCommand(root));
    line.addSubcommand(new ClassCommand(root));
    line.addSubcommand(new CheckCommand(root));
    line.addSubcommand(new NewRoutineCommand(root));
    line.addSubcommand(new JobsCommand(root));
    line.addSubcommand(new MergeCommand(root));
    line.addSubcommand(new DoctorCommand(root));
    line.addSubcommand(new NewPlanCommand(root));
    line.addSubcommand(new NewPatternCommand(root));
    ListCommand.all(root).forEach(each -> line.addSubcommand(each.name(), each));
    line.addSubcommand(new ReferenceCommand(root));
    line.addSubcommand(new SchemaCommand(root));
    line.addSubcommand(new CompletionCommand(root));
    line.addSubcommand(new ManCommand(root));
    line.addSubcommand(new HelpOfCommand());
    line.addSubcommand(
        "reckon", ReckonCommand.of(root::home, root::input, here.out()::print, here.err()::print));
    line.getSubcommands()
        .values()
        .forEach(each -> each.getCommandSpec().versionProvider(new Root.Version()));
    line.setOut(here.out().writer());
    line.setErr(here.err().writer());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setUsageHelpWidth(WIDTH);
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler((wrong, typed) -> WrongUse.tell(wrong, here.err()::print));
    line.setExecutionStrategy(
        parsed ->
            root.options(false)
                .problem()
                .map(root::wrong)
                .orElseGet(() -> new CommandLine.RunLast().execute(parsed)));
    line.setExecutionExceptionHandler(
        (fault, command, parsed) -> {
          here.err()
              .say(
                  fault instanceof InvalidPathException badName
                      ? BadName.sentence(badName)
                      : TraceFile.keep(root.home(), fault, here.clock().instant()));
          return Exit.PROBLEMS;
        });
    return line;
  }
}
