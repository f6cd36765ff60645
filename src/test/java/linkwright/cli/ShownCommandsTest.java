package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.cli.console.Surroundings;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import linkwright.shell.NewBook;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Each command that a help or the README shows is run as it stands there, and comes out good. */
class ShownCommandsTest {
  /** What stands in the README in place of a name of one's own; with a value where it needs one. */
  private static final Map<String, String> OWN =
      Map.ofEntries(
          Map.entry("plan FILE", "plan my-plan.yaml"),
          Map.entry("take-in JOB FILE", "take-in gate-chain pieces.csv"),
          Map.entry("take-in drawer FILE", "take-in drawer stock.csv"),
          Map.entry("new-plan FILE", "new-plan new/plan.yaml"),
          Map.entry(
              "merge A B --into C", "merge laptop/chain.yaml bench/chain.yaml --into new/one.yaml"),
          Map.entry("class FOLDER", "class /media/class"),
          Map.entry("ROUTINE", "round-cable"),
          Map.entry("again JOB", "again window-chain"),
          Map.entry("JOB", "gate-chain"),
          Map.entry("LOT", "wire-9"),
          Map.entry("COMMAND", "plan"),
          Map.entry("[PATH…]", "my-plan.yaml"),
          Map.entry("ID", "one-of-mine"),
          Map.entry("--into FILE", "--into new/more.yaml"),
          Map.entry("--hand-over FILE", "--hand-over new/mara.yaml"),
          Map.entry("--new NAME", "--new Another"),
          Map.entry("student NAME", "student Mara"));

  /** Options that stand in the README without their value. */
  private static final Map<String, String> VALUES =
      Map.of(
          "--length",
          "\"50 cm\"",
          "--metal",
          "copper",
          "--wire",
          "\"1 mm\"",
          "--table",
          "lots",
          "--as",
          "yaml",
          "--names",
          "");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern TICKED = Pattern.compile("`([^`]+)`");

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() throws IOException {
    line = new Commandline(folder);
    Files.createDirectories(folder.resolve("new"));
    run("linkwright new-plan my-plan.yaml");
    closed("Window chain");
    for (String job : List.of("Gate chain", "First try")) {
      run("linkwright walk --plain --new \"" + job + "\" --plan my-plan.yaml");
    }
    run("linkwright drawer --came wire-9 --wire \"0.9 mm\" --length \"3 m\"");
    run("linkwright lesson round-cable --student Mara --plain");
    for (String machine : List.of("laptop", "bench")) {
      Files.createDirectories(folder.resolve(machine));
      Files.copy(
          line.home().resolve("jobs/gate-chain.yaml"), folder.resolve(machine + "/chain.yaml"));
    }
    Files.writeString(
        folder.resolve("pieces.csv"), "blank (mm),length (mm),width (mm)\n43,15.8,5.4\n");
    Files.writeString(
        folder.resolve("stock.csv"),
        "lot,what,metal,wire (mm),length (m)\nold,wire,sterling,0.8,2\n");
    Files.createDirectories(folder.resolve("class"));
  }

  /** Only a closed job is made again. */
  private void closed(String name) {
    List<Fact> facts =
        List.of(
            new Fact.JobOpened(name, "round-cable"),
            new Fact.PlanSet(Wishes.common().texts()),
            new Fact.JobClosed(""));
    Home home = new Home(line.home());
    Handbook handbook = Start.handbook(Library.load(home));
    NewBook.begin(home, "bench", line, name, facts, handbook).orThrow();
  }

  @Test
  void each_example_of_a_help_comes_out_good() throws IOException {
    int examples = 0;
    for (CommandLine command : Commands.line(Surroundings.here()).getSubcommands().values()) {
      String usage = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
      int at = usage.indexOf("Example: ");
      if (at < 0) {
        continue;
      }
      for (String example : usage.substring(at + 9).replaceAll("\\\\\\s+", " ").split("\n", -1)) {
        if (!example.isBlank()) {
          run(example.strip().replace("new-plan my-plan.yaml", "new-plan new/mine.yaml"));
          examples++;
        }
      }
    }
    assertThat(examples).isGreaterThan(28);
  }

  @Test
  void each_command_of_the_readme_does_with_each_option_that_stands_beside_it() throws IOException {
    List<String> commands = new ArrayList<>();
    Files.readString(Path.of("README.md"))
        .lines()
        .filter(row -> row.startsWith("| `linkwright"))
        .forEach(row -> row(row, commands));
    for (String command : commands) {
      Files.deleteIfExists(folder.resolve("new/more.yaml"));
      run(command);
    }
    assertThat(commands).hasSizeGreaterThan(45);
  }

  /** A row of the README's table: commands in its first cell, options in its second. */
  private static void row(String row, List<String> commands) {
    String[] cells = row.split("\\|", -1);
    List<String> own = ticked(cells[1]);
    String first = own.get(0);
    if (first.equals("linkwright") || first.startsWith("linkwright reckon")) {
      // The text UI has walks of its own, each sum its example (EveryCommandTest).
      return;
    }
    for (String each : own) {
      String whole = each.startsWith("linkwright") ? each : other(first, each);
      commands.add(named(whole));
    }
    for (String option : ticked(cells[2])) {
      if (option.startsWith("--")) {
        String value = VALUES.getOrDefault(option, "");
        commands.add(named((first + " " + option + " " + value).strip()));
      }
    }
  }

  /** What stands behind an "or": another command, or another word behind the first. */
  private static String other(String first, String each) {
    String command = first.split(" ", -1)[1];
    return List.of("JOB", "drawer", "hands", "zsh").contains(each)
        ? first.replaceFirst("(linkwright " + command + ") \\S+", "$1 " + each)
        : "linkwright " + each;
  }

  private static String named(String command) {
    String named = command;
    for (String place : OWN.keySet().stream().sorted((a, b) -> b.length() - a.length()).toList()) {
      named =
          named.replaceFirst(
              "(?<![A-Za-z-])" + Pattern.quote(place) + "(?![A-Za-z])", OWN.get(place));
    }
    return named;
  }

  private static List<String> ticked(String cell) {
    return TICKED.matcher(cell).results().map(found -> found.group(1)).toList();
  }

  /** Runs it as a shell would, in the folder of the test. */
  private void run(String shown) throws IOException {
    List<String> typed = List.of("esc", "quit");
    // What is before and behind the program's own words is the shell's.
    String command =
        shown
            .replaceFirst("^source <\\((.*)\\)$", "$1")
            .replaceFirst("^(linkwright .*?) [>|] .*$", "$1");
    Matcher piped = Pattern.compile("cat (\\S+) \\| (.*)").matcher(shown);
    if (piped.matches()) {
      typed = Files.readAllLines(folder.resolve(piped.group(1)));
      command = piped.group(2);
    }
    List<String> words =
        new ArrayList<>(
            WORD.matcher(command)
                .results()
                .map(found -> found.group(1) != null ? found.group(1) : found.group(2))
                .map(this::here)
                .toList());
    assertThat(words.remove(0)).isEqualTo("linkwright");
    boolean screen = List.of("walk", "rehearse", "lesson", "class").contains(words.get(0));
    if (screen && !words.contains("--plain")) {
      words.add("--plain");
    }
    int exit = line.typing(typed, words.toArray(String[]::new));
    assertThat(exit).as(shown + ": " + Arrays.toString(words.toArray()) + line.err()).isZero();
  }

  private String here(String word) {
    return word.equals("/media/class")
        ? folder.resolve("class").toString()
        : word.matches(".*\\.(yaml|csv)") ? folder.resolve(word).toString() : word;
  }
}
