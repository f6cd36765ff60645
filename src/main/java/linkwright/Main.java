package linkwright;

import java.nio.file.InvalidPathException;
import java.util.Locale;
import java.util.Optional;
import linkwright.cli.Commands;
import linkwright.cli.StartOptions;
import linkwright.cli.Starting;
import linkwright.cli.console.BadName;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.Teller;
import linkwright.quantity.Read;

/** Starts Linkwright: the coach when no command is given, else the command. */
public final class Main {
  private Main() {}

  /** The program's beginning. */
  public static void main(String[] arguments) {
    // Figures are written as they are read, whatever the system's language writes.
    Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    int status = begun(arguments);
    // On the good path nothing is forced: whatever else runs in this process may end as it likes.
    if (status != Exit.GOOD) {
      System.exit(status);
    }
  }

  /** The user's own folder may have a name that the system's settings cannot express. */
  private static int begun(String... arguments) {
    try {
      return run(Surroundings.here(), arguments);
    } catch (InvalidPathException badName) {
      Teller.of(System.err, false).say(BadName.sentence(badName));
      return Exit.PROBLEMS;
    }
  }

  /** What was not heard was not done: it is told, and the shell that ran this knows. */
  static int run(Surroundings here, String... arguments) {
    int status = done(here, arguments);
    Optional<String> lost = here.out().lost();
    lost.ifPresent(here.err()::say);
    return lost.isPresent() && status == Exit.GOOD ? Exit.PROBLEMS : status;
  }

  private static int done(Surroundings here, String... arguments) {
    Optional<Read<StartOptions>> start = StartOptions.of(arguments);
    if (start.isEmpty()) {
      return Commands.run(here, arguments);
    }
    Read<StartOptions> options = start.get();
    if (options instanceof Read.Bad<StartOptions> bad) {
      here.err().say(bad.sentence());
      return Exit.WRONG_USE;
    }
    return Starting.run(options.orThrow(), here);
  }
}
