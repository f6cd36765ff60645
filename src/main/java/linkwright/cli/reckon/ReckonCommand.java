package linkwright.cli.reckon;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import linkwright.cli.console.WrongUse;
import linkwright.coach.form.AskMeasure;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Home;
import linkwright.quantity.Read;
import linkwright.reckon.Ask;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Sum;
import linkwright.routine.TradeWords;
import linkwright.text.Text;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code linkwright reckon SUM …}: each sum of the reckoner as a command of its own. */
public final class ReckonCommand {
  /** The option that says how the result is written. */
  static final String AS = "--as";

  /** The option that leaves her own bench out. */
  static final String NO_BENCH = "--no-bench";

  private static final int SYNOPSIS = 70;
  private static final int USAGE = "Usage: ".length();

  private ReckonCommand() {}

  /**
   * The command with one below it for each sum.
   *
   * @param home asked for the user's folder when a sum is reckoned, so that {@code --home} counts
   * @param input where a file that was named is; a hyphen is what comes on standard input
   * @param out takes the result, line by line
   * @param err takes what is wrong and what to mind, a sentence at a time
   */
  public static CommandLine of(
      Supplier<Home> home,
      Function<String, Read<Path>> input,
      Consumer<String> out,
      Consumer<String> err) {
    CommandSpec reckon = CommandSpec.create().name("reckon").mixinStandardHelpOptions(true);
    reckon
        .usageMessage()
        .description("Reckons one thing of the bench by itself.", "")
        .footer(
            "",
            "Amounts carry their unit: \"0.9 mm\", \"19 AWG\", \"16 in\", \"12 g\", \"90 %%\".",
            "Example: linkwright reckon ring --wire \"0.9 mm\" --inside \"3 mm\" --metal sterling");
    CommandLine command = new CommandLine(reckon);
    for (Sum sum : Reckoner.sums()) {
      command.addSubcommand(sum.id(), of(sum, home, input, out, err));
    }
    command.setExpandAtFiles(false);
    command.setParameterExceptionHandler((wrong, arguments) -> WrongUse.tell(wrong, err));
    return command;
  }

  private static CommandLine of(
      Sum sum,
      Supplier<Home> home,
      Function<String, Read<Path>> input,
      Consumer<String> out,
      Consumer<String> err) {
    CommandSpec[] self = new CommandSpec[1];
    Callable<Integer> run = () -> ReckonRun.of(sum, self[0], home.get(), input, out, err);
    CommandSpec spec = CommandSpec.wrapWithoutInspection(run);
    self[0] = spec;
    spec.name(sum.id()).mixinStandardHelpOptions(true);
    String american = TradeWords.AMERICAN.show(sum.id());
    if (!american.equals(sum.id())) {
      spec.aliases(american);
    }
    spec.usageMessage()
        .description(escaped(sum.says()))
        .customSynopsis(synopsis(sum))
        .footer(
            "",
            "After each option: what it is, an example, and behind a semicolon what is taken"
                + " without it.",
            "Example: " + escaped(example(sum)));
    for (Ask ask : sum.asks()) {
      spec.addOption(option(ask));
    }
    spec.addOption(
        OptionSpec.builder(AS)
            .completionCandidates(new OutForm.Named())
            .type(String.class)
            .paramLabel("FORM")
            .description(OutForm.SAYS)
            .build());
    spec.addOption(
        OptionSpec.builder(NO_BENCH)
            .type(boolean.class)
            .arity("0")
            .description("As if your bench said nothing.")
            .build());
    return new CommandLine(spec);
  }

  /** What is needed stands bare, what is not in brackets. */
  private static String[] synopsis(Sum sum) {
    StringBuilder line = new StringBuilder("linkwright reckon " + sum.id());
    for (Ask ask : sum.asks()) {
      boolean alone = ask.kind() == Ask.Kind.SWITCH;
      String option = "--" + ask.key() + (alone ? "" : "=" + label(ask));
      line.append(' ').append(ask.needed() ? option : "[" + option + "]");
    }
    line.append(" [").append(AS).append("=FORM] [").append(NO_BENCH).append(']');
    List<String> lines = new ArrayList<>(Text.wrap(line.toString(), SYNOPSIS));
    // What goes on stands behind the word that comes before the first line.
    lines.subList(1, lines.size()).replaceAll(each -> " ".repeat(USAGE) + each);
    return lines.toArray(String[]::new);
  }

  /**
   * The sum with all that comes to a result, in the words of its own hints. It breaks between
   * options only, as a shell takes it.
   */
  private static String example(Sum sum) {
    StringBuilder line = new StringBuilder("linkwright reckon " + sum.id());
    for (Ask ask : sum.exampled()) {
      String first = ask.hint().replaceAll("( or |;|,(?= )).*", "");
      String option = " --" + ask.key() + " \"" + first + "\"";
      boolean room = line.length() - line.lastIndexOf("\n") + option.length() < SYNOPSIS;
      line.append(room ? "" : " \\\n        ").append(option);
    }
    return line.toString();
  }

  private static OptionSpec option(Ask ask) {
    boolean many = ask.kind() == Ask.Kind.MANY;
    OptionSpec.Builder option =
        OptionSpec.builder("--" + ask.key())
            .paramLabel(label(ask))
            .description(
                escaped(
                    ask.label()
                        + (ask.needed() ? " (needed)" : "")
                        + (many ? ", once or more" : "")
                        + ": "
                        + hint(ask)));
    if (ask.kind() == Ask.Kind.SWITCH) {
      return option.type(boolean.class).arity("0").paramLabel("").build();
    }
    return many
        ? option.type(List.class).auxiliaryTypes(String.class).arity("1").build()
        : option.type(String.class).build();
  }

  private static String hint(Ask ask) {
    return ask.kind() == Ask.Kind.PATTERN ? "an id, or a pattern's file" : ask.hint();
  }

  private static String label(Ask ask) {
    return switch (ask.kind()) {
      case METAL -> "METAL";
      case SOLDER -> "SOLDER";
      case PATTERN -> "PATTERN";
      case FILE -> "FILE";
      case WORDS -> String.join("|", ask.fixed());
      case MANY -> "NAME=SIZE";
      case FREE ->
          switch (AskMeasure.of(ask)) {
            case LENGTH -> "LENGTH";
            case WIRE -> "WIRE";
            case MASS -> "MASS";
            case SHARE -> "SHARE";
            case NUMBER -> "NUMBER";
            case TIME -> "TIME";
            case WORDS -> ask.key().toUpperCase(Locale.ROOT);
          };
      case SWITCH -> "";
    };
  }

  /** Descriptions are format strings to picocli. */
  private static String escaped(String text) {
    return text.replace("%", "%%");
  }
}
