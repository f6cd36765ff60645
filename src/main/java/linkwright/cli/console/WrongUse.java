package linkwright.cli.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import linkwright.quantity.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with how a command was written, with the nearest known word. */
public final class WrongUse {
  /** Options that say how a command answers, not about what. */
  private static final List<String> OWN = List.of("--as", "--home");

  /** The exit code of wrong use. */
  public static final int EXIT = 2;

  private WrongUse() {}

  /** Tells what was wrong in a sentence and answers with the exit code. */
  public static int tell(ParameterException wrong, Consumer<String> err) {
    err.accept(sentence(wrong));
    return EXIT;
  }

  private static String sentence(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    if (wrong instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(command, name, unmatched.getUnmatched().get(0));
    }
    if (wrong instanceof OverwrittenOptionException twice) {
      return "The option " + name(twice.getOverwritten()) + " stands twice: give it once.";
    }
    if (wrong instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      ArgSpec first = missing.getMissing().get(0);
      boolean absent = !first.isOption() || (first.required() && first.stringValues().isEmpty());
      return absent
          ? "“" + name + "” needs " + name(first) + "."
          : "The option " + name(first) + " needs a value behind it.";
    }
    if (wrong.getArgSpec() == null && wrong.getValue() != null) {
      return unmatched(command, name, wrong.getValue());
    }
    if (!command.getSubcommands().isEmpty()) {
      return "Write a command behind “" + name + "”, one of: " + words(command) + ".";
    }
    return wrong.getMessage();
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static String unmatched(CommandLine command, String name, String word) {
    if (word.startsWith("-")) {
      String typed = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
      List<String> options = new ArrayList<>();
      command.getCommandSpec().options().forEach(option -> options.add(option.longestName()));
      return "There is no option "
          + typed
          + " here."
          + hint(Nearest.of(typed, options), String.join(", ", options));
    }
    if (!command.getSubcommands().isEmpty()) {
      return "“"
          + word
          + "” is no command of “"
          + name
          + "”."
          + hint(Nearest.of(word, List.copyOf(command.getSubcommands().keySet())), words(command));
    }
    boolean takesNone =
        command.getCommandSpec().args().stream()
            .noneMatch(each -> each.arity().max() > 0 && !OWN.contains(name(each)));
    if (takesNone) {
      return "“" + name + "” takes nothing behind it, and there stands “" + word + "”.";
    }
    return "“"
        + word
        + "” stands behind no option. An amount and its unit go in quotes, as in --wire \"0.9 mm\".";
  }

  private static String hint(Optional<String> nearest, String all) {
    return nearest.map(near -> " Did you mean " + near + "?").orElse(" There are: " + all + ".");
  }

  private static String words(CommandLine command) {
    return String.join(", ", command.getSubcommands().keySet());
  }
}
