package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.cli.console.Surroundings;
import linkwright.coach.Bencher;
import linkwright.coach.keys.Act;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Each line of the plain walk and of every help is a sentence, and none holds a name of ours. */
class PlainSentencesTest {
  /** A stop too many, a blank too many, a wrong article. */
  private static final Pattern BROKEN =
      Pattern.compile(
          "(?<!\\.)\\.\\.(?!\\.)|[?!:,;]\\.(?!\\w)| [.,;](?!\\w)| {2,}"
              + "|\\b[Aa] (?!one\\b|once\\b|use|usual|unit|uni)[aeiou]|\\b[Aa]n [bcdfgjklmnpqrstvwxyz]");

  /** A sentence begins with a capital, a figure, a quotation; what is to be typed stands first. */
  private static final Pattern BEGINS = Pattern.compile("^([\\p{Lu}\\d“\"(<…/-]|[a-z ]+: ).*");

  private static final Pattern ENDS = Pattern.compile(".*([.:!?”]|^[\\p{Lu}][^.:]*: .*)$");

  /** A moment as files have it, a zone, names with a line below or a capital within. */
  private static final Pattern OURS =
      Pattern.compile(
          "\\dT\\d\\d:\\d|\\((UTC|Z|[A-Z]{3,4}|Etc/\\w+)\\)|\\b[a-z]+_[a-z]+|\\b[a-z]+[A-Z][a-z]+\\b");

  @TempDir private Path folder;

  @Test
  void every_line_of_a_walk_is_a_sentence() throws Exception {
    Commandline line = new Commandline(folder);
    List<String> typed = new ArrayList<>();
    Stream.of(linesOfPlaces()).forEach(typed::add);
    line.typing(typed, "walk", "--plain");
    List<String> wrong = new ArrayList<>();
    line.out()
        .lines()
        .filter(each -> !each.isBlank())
        .forEach(
            each -> {
              boolean whole = BEGINS.matcher(each).matches() && ENDS.matcher(each).matches();
              if (!whole || BROKEN.matcher(each).find() || ours(each)) {
                wrong.add(each);
              }
            });
    assertThat(wrong.stream().distinct()).isEmpty();
    assertThat(line.out().lines().count()).isGreaterThan(200);
  }

  private static String[] linesOfPlaces() {
    return ("help|where|plan|?|esc|nearest|tests|trial|piles|wire|wire came|list|what|esc|weigh|esc|"
            + "card|card customer: Ana|book|book 30|cautions|timers|timer kettle 8 min|timers|stop|forgot|="
            + "|reckoner|reckoner ring|esc|words|words flux|lists|metals|solders|routines|help tray|"
            + "help bench|find pickle|search job|strike 1|bench|repeat||||cards|why|look|look back|"
            + "open step|next|next|back|redo|scrap 2|take|joints|esc|undo|restore|note a fine day.|book 3|undo note|"
            + "what if|esc|there|esc|out and in|your bench|hands|drawer|tray|esc|lesson|1||0||student|esc|"
            + "class|esc|rehearse|||where|settings|?|esc|brief|brief|lit|shut|away||who Ana|hours|esc|prices|"
            + "?|esc|out|esc|log|esc|sample|follow|lies|esc|answer|quit")
        .split("\\|", -1);
  }

  /** Whatever help names and whatever an act is called, help of it has something to say. */
  @Test
  void help_knows_every_word() {
    Commandline line = new Commandline(folder);
    line.typing(List.of("help", "quit"), "walk", "--plain");
    List<String> typed = new ArrayList<>();
    line.out()
        .lines()
        .filter(each -> each.matches("[a-z]+: .*"))
        .forEach(each -> typed.add("help " + each.replaceFirst(":.*", "")));
    assertThat(typed).hasSizeGreaterThan(40);
    for (Act act : Act.values()) {
      typed.add("help " + act.words());
    }
    typed.addAll(List.of("help lists", "help routines", "help metals", "lists", "routines"));
    line.typing(typed, "walk", "--plain");
    assertThat(line.out())
        .doesNotContain("Nothing is known", "Nothing is called", "is no word here");
  }

  private static boolean ours(String line) {
    return OURS.matcher(line).find() || steps().anyMatch(line::contains);
  }

  /** Ids of steps, of more words than one. */
  private static Stream<String> steps() {
    return Bencher.LIBRARY.routines().values().stream()
        .flatMap(routine -> routine.steps().stream())
        .map(step -> step.id().word())
        .filter(id -> id.contains("-"));
  }

  @Test
  void every_help_is_in_sentences() {
    CommandLine all = Commands.line(Surroundings.here());
    Stream.concat(
            all.getSubcommands().values().stream(),
            all.getSubcommands().get("reckon").getSubcommands().values().stream())
        .forEach(
            command -> {
              for (String text : command.getCommandSpec().usageMessage().description()) {
                assertThat(text).matches("([A-Z-].*)?").doesNotContainPattern(BROKEN);
              }
              String usage = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
              assertThat(usage.lines().map(String::strip))
                  .as(command.getCommandName())
                  .noneMatch(text -> text.matches("[a-z][a-z-]*,"));
            });
  }

  @Test
  void the_readme_has_no_broken_sentence() throws Exception {
    String readme = Files.readString(Path.of("README.md"));
    assertThat(readme.lines().filter(each -> !each.startsWith("    ") && !each.startsWith("|")))
        .noneMatch(each -> BROKEN.matcher(each.strip()).find());
  }
}
