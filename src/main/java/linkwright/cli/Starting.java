package linkwright.cli;

import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.cli.console.BadName;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Device;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.TraceFile;
import linkwright.cli.walk.Opening;
import linkwright.cli.walk.Walk;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.terminal.Display;
import linkwright.terminal.DisplayWishes;
import linkwright.terminal.Displays;
import linkwright.terminal.Look;
import linkwright.terminal.WindowDisplay;

/** Starts the coach on a display; where there is none, tells how the job stands. */
public final class Starting {
  private static final String PLAIN_THEME = "plain";

  private static final String NO_WINDOW =
      "No window can be opened here, for no display answers: it goes on without one.";

  private Starting() {}

  /** Runs until the user leaves; answers with the exit code. */
  public static int run(StartOptions options, Surroundings here) {
    return run(options, here, Optional.empty());
  }

  /** The same, with a job's book opened at once. */
  static int run(StartOptions options, Surroundings here, Optional<String> job) {
    return run(options, here, job, Optional.empty());
  }

  /** The same, led to a place at once. */
  static int run(
      StartOptions options, Surroundings here, Optional<String> job, Optional<Message.Led> led) {
    Home home;
    try {
      home = here.home(options.home());
    } catch (InvalidPathException badName) {
      here.err().say(BadName.sentence(badName));
      return Exit.PROBLEMS;
    }
    try {
      return run(options, here, home, job, led);
    } catch (RuntimeException | Error fault) {
      // The display was closed on the way here, so this line is seen in the user's own terminal.
      here.err().say(TraceFile.keep(home, fault, here.clock().instant()));
      return Exit.PROBLEMS;
    }
  }

  private static int run(
      StartOptions options,
      Surroundings here,
      Home home,
      Optional<String> job,
      Optional<Message.Led> led) {
    Choices choices = Choices.load(home);
    if (options.plain()) {
      return plain(home, choices, here, job, led);
    }
    Optional<Display> display = Displays.choose(here.environment(), wishes(options, choices));
    boolean noWindow = options.window() && !display.map(Starting::isWindow).orElse(false);
    if (display.isEmpty()) {
      if (noWindow) {
        here.err().say(NO_WINDOW);
      }
      // Who asked for a place hears it in lines; the plan of a job answers something else.
      return here.environment().isDumb() || led.isPresent()
          ? plain(home, choices, here, job, led)
          : glance(home, choices, here);
    }
    List<String> told = new ArrayList<>();
    if (noWindow) {
      told.add(NO_WINDOW);
    }
    display.get().told().ifPresent(told::add);
    choices.problems().forEach(problem -> told.add(problem.sentence()));
    Settings settings = choices.settings();
    String device = choices.device(here, home);
    String parting =
        Start.run(home, settings, device, display.get(), job, led, told, Device.clock(here));
    if (!parting.isEmpty()) {
      here.out().say(parting);
    }
    return Exit.GOOD;
  }

  private static int plain(
      Home home,
      Choices choices,
      Surroundings here,
      Optional<String> job,
      Optional<Message.Led> led) {
    reading(here);
    Library library = Library.load(home);
    here.err().sayAll(Located.all(choices.problems()));
    here.err().sayAll(Located.hers(library, home));
    if (led.isPresent()) {
      return Walk.led(here, home, choices, library, job, led.get());
    }
    Read<Opening> opening =
        job.isPresent()
            ? Read.good(new Opening(job, Optional.empty(), List.of()))
            : Opening.open(job, home, library, here.clock().instant());
    List<Problem> problems = opening.map(Opening::problems).orElse(List.of());
    if (opening instanceof Read.Bad<Opening> || !problems.isEmpty()) {
      opening.problem().ifPresent(here.err()::say);
      here.err().sayAll(Located.all(problems));
      return Exit.PROBLEMS;
    }
    return Walk.run(here, home, choices, library, opening.orThrow());
  }

  /** A terminal that stays empty for seconds looks as if nothing had begun. */
  static void reading(Surroundings here) {
    if (here.environment().terminal()) {
      here.out().say("Reading…");
    }
  }

  private static int glance(Home home, Choices choices, Surroundings here) {
    Library library = Library.load(home);
    here.err().sayAll(Located.all(choices.problems()));
    here.err().sayAll(Located.hers(library, home));
    Read<List<String>> glance =
        Glance.of(home, library, choices.settings(), here.clock().instant());
    glance.problem().ifPresent(here.err()::say);
    glance.found().ifPresent(here.out()::sayAll);
    return glance.isGood() ? Exit.GOOD : Exit.PROBLEMS;
  }

  private static boolean isWindow(Display display) {
    return display instanceof WindowDisplay;
  }

  private static DisplayWishes wishes(StartOptions options, Choices choices) {
    // Without a wish the terminal's own background decides.
    Optional<String> theme = options.theme().or(() -> choices.user().theme());
    return new DisplayWishes(
        options.window(),
        theme.flatMap(Starting::look),
        options.fontSize().orElse(choices.user().fontSize()),
        choices.user().mouse());
  }

  private static Optional<Look> look(String theme) {
    return theme.equals(PLAIN_THEME) ? Optional.of(Look.NO_COLOUR) : Look.named(theme);
  }
}
