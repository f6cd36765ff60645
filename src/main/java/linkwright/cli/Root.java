package linkwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.InTradeWords;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.kernel.Message;
import linkwright.files.Home;
import linkwright.files.UserSettings;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program by itself; without a command it starts the coach. */
@Command(
    name = "linkwright",
    mixinStandardHelpOptions = true,
    versionProvider = Root.Version.class,
    description = "A bench coach for soldered chain made by hand. Without a command it opens.",
    synopsisSubcommandLabel = "[COMMAND]",
    footer = {
      "",
      "Exit codes: 0 good; 1 what was asked for has problems, which are told; 2 it was",
      "asked wrongly: a command, option, value, name or file that is not there; 128 and",
      "more where a signal ended it, such as 143 for TERM.",
      "linkwright help COMMAND tells what a command does and how it is written."
    })
final class Root implements Callable<Integer> {
  /** Tells the version, which the build writes into a file beside this class. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
      return new String[] {"linkwright " + version()};
    }
  }

  /** The version, as the build wrote it. */
  static String version() throws IOException {
    try (InputStream told = Root.class.getResourceAsStream("version.txt")) {
      return new String(told.readAllBytes(), StandardCharsets.US_ASCII).strip();
    }
  }

  @Option(
      names = "--home",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description = "Your folder of jobs and settings; else LINKWRIGHT_HOME, else ~/linkwright.")
  private Optional<String> home = Optional.empty();

  @Option(names = "--window", description = "A window even where there is a terminal.")
  private boolean window;

  @Option(
      names = "--theme",
      paramLabel = "THEME",
      description = "dark, light, high-contrast or plain.")
  private Optional<String> theme = Optional.empty();

  @Option(
      names = "--font-size",
      paramLabel = "N",
      description = "Height of the window's letters in points, 8 to 72.")
  private Optional<String> fontSize = Optional.empty();

  @Option(names = "--plain", description = "Line by line, for screen readers and scripts.")
  private boolean plain;

  private final Surroundings here;

  Root(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    // Options of the start alone are read before, and faster; what comes here was ended by "--".
    return start(plain, Optional.empty());
  }

  Surroundings here() {
    return here;
  }

  Home home() {
    return here.home(home);
  }

  /** Starts the coach as asked, with a job opened at once if one is named. */
  int start(boolean asPlain, Optional<String> job) {
    return start(asPlain, job, Optional.empty());
  }

  /** The same, led to a place at once. */
  int start(boolean asPlain, Optional<String> job, Optional<Message.Led> led) {
    Read<StartOptions> options = options(asPlain);
    return options
        .problem()
        .map(this::wrong)
        .orElseGet(() -> Starting.run(options.orThrow(), here, job, led));
  }

  /** The options of the start, before whatever command they stand. */
  Read<StartOptions> options(boolean asPlain) {
    List<String> typed = new ArrayList<>();
    home.ifPresent(folder -> typed.addAll(List.of("--home", folder)));
    theme.ifPresent(name -> typed.addAll(List.of("--theme", name)));
    fontSize.ifPresent(points -> typed.addAll(List.of("--font-size", points)));
    if (window) {
      typed.add("--window");
    }
    if (asPlain) {
      typed.add("--plain");
    }
    return StartOptions.of(typed.toArray(String[]::new)).orElseThrow();
  }

  /** The path that a user typed. */
  static Read<Path> path(String typed) {
    try {
      return Read.good(Path.of(typed));
    } catch (InvalidPathException notAName) {
      return Read.bad("\"" + typed + "\" cannot be the name of a file.");
    }
  }

  /** The path that a user typed; a hyphen is what comes on standard input, kept in a file. */
  Read<Path> input(String typed) {
    if (!typed.equals("-")) {
      return path(typed);
    }
    try {
      Path folder = Files.createTempDirectory("linkwright");
      Path file = folder.resolve(Located.STANDARD_INPUT);
      file.toFile().deleteOnExit();
      folder.toFile().deleteOnExit();
      Files.writeString(file, here.in().lines().collect(Collectors.joining("\n", "", "\n")));
      return Read.good(file);
    } catch (IOException | UncheckedIOException refused) {
      return Read.bad("Standard input could not be read: " + refused.getMessage() + ".");
    }
  }

  /** What a place says, in the user's trade words. */
  List<Part> inHerWords(List<Part> parts) {
    UserSettings user = Choices.load(home()).user();
    return new InTradeWords(user.words(), user.units()).of(new Content("", parts)).parts();
  }

  /** Tells what was used wrongly. */
  int wrong(String sentence) {
    here.err().say(sentence);
    return Exit.WRONG_USE;
  }
}
