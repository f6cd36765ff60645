package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.cli.console.Surroundings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

/** What holds of each command there is: its help, its example, its forms of an answer. */
class EveryCommandTest {
  /** Commands that answer nothing but what they wrote, or that are talked through. */
  private static final List<String> NO_FORM =
      List.of(
          "walk",
          "rehearse",
          "lesson",
          "new-plan",
          "new-pattern",
          "new-routine",
          "schema",
          "completion",
          "man",
          "help",
          "reckon",
          "take-in");

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  private static Map<String, CommandLine> commands() {
    Surroundings here = Surroundings.here();
    return Commands.line(here).getSubcommands();
  }

  @TestFactory
  Stream<DynamicTest> its_help_has_an_example_and_shows_what_is_needed() {
    return commands().entrySet().stream()
        .filter(each -> !each.getKey().equals("help"))
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> help(each.getValue())));
  }

  private static void help(CommandLine command) {
    String name = command.getCommandName();
    String usage = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
    assertThat(usage).contains("Example: ").contains("linkwright " + name);
    String synopsis = command.getHelp().synopsis(0);
    for (ArgSpec argument : command.getCommandSpec().args()) {
      if (argument.required() && argument.isOption()) {
        String option = ((CommandLine.Model.OptionSpec) argument).longestName();
        assertThat(synopsis).contains(option).doesNotContain("[" + option);
      }
      if (!argument.hidden() && argument.arity().max() > 0) {
        assertThat(argument.paramLabel()).as(name).doesNotContain("<").isNotBlank();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"--theme nosuch jobs", "--font-size 200 metals", "--font-size 9x jobs"})
  void an_option_of_the_start_that_is_wrong_is_refused_before_any_command(String typed) {
    assertThat(line.run(typed.split(" ", -1))).isEqualTo(2);
    assertThat(line.out()).isEmpty();
  }

  @Test
  void what_is_checked_on_standard_input_is_called_so() {
    assertThat(line.typing(List.of("format: 1", "metall: sterling", "wire: 1 mm"), "check", "-"))
        .isEqualTo(1);
    assertThat(line.out()).contains("standard input").doesNotContain("/tmp", ".yaml");
  }

  @Test
  void what_is_planned_on_standard_input_is_called_so() {
    for (List<String> plan :
        List.of(
            List.of("format: 1", "metall: sterling", "wire: 1 mm"),
            List.of("format: 1", "metal: sterling", "wire: 1 mm"),
            List.of("no plan"))) {
      line.typing(plan, "plan", "-");
      assertThat(line.err()).contains("standard input").doesNotContain("/tmp", ".yaml");
    }
  }

  @Test
  void the_plan_file_to_start_from_comes_out_over_its_formers() {
    String mine = line.home().resolve("mine.yaml").toString();
    assertThat(line.run("new-plan", mine)).isZero();
    assertThat(line.run("plan", mine)).as(line.err()).isZero();
    assertThat(line.out() + line.err()).contains("Links: ").doesNotContain("cannot be had");
  }

  @Test
  void the_walk_leads_look_up_to_the_look_up_and_keeps_a_note_whole() throws IOException {
    line.typing(
        List.of("look up flux", "look it up flux", "help tap", "note a; b", "book", "quit"),
        "walk",
        "--plain");
    assertThat(line.out())
        .contains("Flux (word).", "Nothing is called “tap”. Did you mean", "a; b")
        .doesNotContain("is no word here", "Taper (");
  }

  /** An example of a sum, copied into a shell, comes to a result. */
  @TestFactory
  Stream<DynamicTest> its_example_of_a_sum_comes_to_a_result() {
    return commands().get("reckon").getSubcommands().values().stream()
        .map(
            each ->
                DynamicTest.dynamicTest(
                    each.getCommandName(),
                    () -> {
                      String usage = each.getUsageMessage(CommandLine.Help.Ansi.OFF);
                      String example =
                          usage
                              .substring(usage.indexOf("Example: linkwright reckon ") + 27)
                              .replaceAll("\\\\\\s+", " ");
                      String[] words =
                          Pattern.compile("\"([^\"]*)\"|(\\S+)")
                              .matcher(example.strip())
                              .results()
                              .map(
                                  found -> found.group(1) != null ? found.group(1) : found.group(2))
                              .toArray(String[]::new);
                      Ran ran = Ran.reckon(words);
                      assertThat(ran.exit()).as(example + ran.err()).isZero();
                      assertThat(ran.out()).isNotBlank();
                    }));
  }

  /** What stands in quotes is copied whole, and a line of the list is a sentence. */
  @TestFactory
  Stream<DynamicTest> its_help_breaks_no_quotation_and_begins_with_a_sentence() {
    return Stream.concat(
            commands().values().stream(),
            commands().get("reckon").getSubcommands().values().stream())
        .map(
            each ->
                DynamicTest.dynamicTest(each.getCommandSpec().qualifiedName(), () -> whole(each)));
  }

  private static void whole(CommandLine command) {
    String usage = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
    assertThat(usage.lines())
        .allMatch(line -> line.length() <= 80)
        .allMatch(line -> line.chars().filter(c -> c == '"').count() % 2 == 0);
    assertThat(command.getCommandSpec().usageMessage().description()[0]).endsWith(".");
  }

  /** The same mistake ends with the same code, whatever command it was made with. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan no-such",
        "again no-such",
        "walk no-such",
        "export no-such",
        "hands --leave-out no-such",
        "take-in drawer no-such.csv",
        "check no-such",
        "rehearse no-such",
        "lesson no-such",
        "student no-such",
        "class /no/such",
        "schema no-such",
        "completion no-such",
        "help no-such",
        "no-such",
        "metals no-such",
        "jobs --as no-such",
        "bench --set kerf=no-such",
        "bench --set no-such=3",
        "drawer --came x --wire no-such --length 1",
        "reckon no-such",
        "reckon ring --wire no-such --inside 3",
        "reckon link --pattern no-such.yaml --wire 1mm --blank 38mm",
        "reckon blank --tried no-such.yaml"
      })
  void what_is_not_there_and_what_cannot_be_read_is_wrong_use(String typed) {
    assertThat(line.run(typed.split(" "))).as(line.err()).isEqualTo(2);
    assertThat(line.err()).isNotBlank();
  }

  @Test
  void each_that_answers_does_in_every_form() {
    List<String> without = new ArrayList<>();
    commands()
        .forEach(
            (name, command) -> {
              if (command.getCommandSpec().findOption("--as") == null) {
                without.add(name);
              }
            });
    assertThat(without).containsExactlyInAnyOrderElementsOf(NO_FORM);
    commands()
        .get("reckon")
        .getSubcommands()
        .forEach(
            (name, sum) ->
                assertThat(sum.getCommandSpec().findOption("--as")).as(name).isNotNull());
  }

  @ParameterizedTest
  @ValueSource(strings = {"hands", "bench", "drawer", "doctor", "jobs", "check", "file-keys"})
  void the_same_rows_stand_in_yaml_json_and_csv(String name) throws IOException {
    line.run("drawer", "--came", "wire-9", "--wire", "0.9 mm", "--length", "3 m");
    line.run("bench", "--set", "kerf=0.3 mm");
    line.typing(List.of("esc", "quit"), "walk", "--plain", "--new", "Window chain");
    assertThat(line.run(name, "--as", "json")).as(line.err()).isZero();
    JsonNode json = new ObjectMapper().readTree(line.out());
    assertThat(line.run(name, "--as", "yaml")).isZero();
    JsonNode yaml = new YAMLMapper().readTree(line.out());
    assertThat(yaml.properties().iterator().next().getValue().size())
        .isEqualTo(json.properties().iterator().next().getValue().size());
    assertThat(line.run(name, "--as", "csv")).isZero();
    int rows = json.properties().iterator().next().getValue().size();
    assertThat(line.out().lines().count()).isEqualTo(rows + 1);
    assertThat(line.run(name, "--as", "table")).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bench", "jobs", "doctor", "export drawer", "solders"})
  void a_row_for_other_programs_has_no_key_that_says_nothing(String typed) {
    line.run("drawer", "--came", "wire-9", "--wire", "0.9 mm", "--length", "3 m");
    line.run("bench", "--set", "kerf=0.3 mm");
    line.typing(List.of("esc", "quit"), "walk", "--plain", "--new", "Window chain");
    for (String form : List.of("json", "yaml")) {
      assertThat(line.run((typed + " --as " + form).split(" ", -1))).as(line.err()).isZero();
      assertThat(line.out()).as(form).isNotBlank().doesNotContain("\"\"");
    }
  }

  @Test
  void a_bench_as_rows_says_what_its_lines_say() {
    line.run("bench", "--set", "kerf=0.3 mm");
    assertThat(line.run("bench", "--as", "csv")).isZero();
    assertThat(line.out()).startsWith("list,of,what,value,unit,plus_minus,from,says\n");
    assertThat(line.out()).contains("kerf,0.3,mm");
  }

  @Test
  void a_figure_is_a_number_with_the_digits_it_was_told_with() throws IOException {
    line.run("bench", "--set", "kerf=0.30 mm");
    assertThat(line.run("bench", "--as", "csv")).isZero();
    String told = line.out().lines().filter(row -> row.contains("kerf")).findFirst().orElseThrow();
    String digits = told.replaceAll(".*kerf,([0-9.]+),mm.*", "$1");
    assertThat(line.run("bench", "--as", "json")).isZero();
    assertThat(line.out()).contains("\"value\": " + digits + ",");
    assertThat(line.run("bench", "--as", "yaml")).isZero();
    JsonNode kerf = null;
    for (JsonNode row : new YAMLMapper().readTree(line.out()).get("bench")) {
      kerf = row.get("what").asText().equals("kerf") ? row : kerf;
    }
    assertThat(kerf.get("value").isNumber()).isTrue();
    assertThat(kerf.get("unit").asText()).isEqualTo("mm");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan",
        "routine",
        "caution",
        "pattern",
        "book",
        "settings",
        "keys",
        "bench",
        "drawer"
      })
  void the_schema_of_a_sort_of_file_is_json(String kind) throws IOException {
    assertThat(line.run("schema", kind)).isZero();
    JsonNode schema = new ObjectMapper().readTree(line.out());
    assertThat(schema.get("$id").asText()).contains(kind);
  }

  @Test
  void a_sort_of_file_that_is_none_is_told_with_the_nearest() {
    assertThat(line.run("schema", "rutine")).isEqualTo(2);
    assertThat(line.err()).contains("Did you mean routine?");
  }

  @Test
  void a_book_on_standard_input_is_merged() throws IOException {
    line.typing(List.of("esc", "quit"), "walk", "--plain", "--new", "Window chain");
    Path book = line.home().resolve("jobs/window-chain.yaml");
    String into = folder.resolve("one.yaml").toString();
    assertThat(line.typing(Files.readAllLines(book), "merge", "-", "--into", into))
        .as(line.err())
        .isZero();
    assertThat(Files.readString(Path.of(into))).contains("job-opened");
    assertThat(line.out() + line.err())
        .contains("standard input: ")
        .doesNotContain("standard-input");
    line.typing(
        List.of("format: 1", "name: none"),
        "merge",
        "-",
        book.toString(),
        "--into",
        into + "2.yaml");
    assertThat(line.err()).isNotEmpty().doesNotContain("standard-input");
  }

  @Test
  void help_of_help_shows_its_example_and_wrapped_usage_stands_behind_its_word() {
    assertThat(line.run("help", "--help")).isZero();
    assertThat(line.out()).contains("Example: linkwright help plan");
    line.run("help", "reckon", "ring");
    assertThat(line.out()).containsPattern("Usage: linkwright reckon ring.*\\R {7}\\S");
  }

  @Test
  void a_class_is_read_where_there_is_no_home_yet_and_none_is_made() {
    Path none = folder.resolve("none");
    assertThat(line.run("--home", none.toString(), "class")).as(line.err()).isZero();
    assertThat(line.out()).contains("No student's book is in this folder.");
    assertThat(line.run("--home", none.toString(), "student")).as(line.err()).isZero();
    assertThat(none).doesNotExist();
  }

  @Test
  void a_cell_in_which_nothing_stands_is_no_row() {
    line.run("drawer", "--came", "march", "--wire", "0.8 mm", "--length", "3 m");
    line.run("drawer", "--as", "csv");
    assertThat(line.out()).contains("march").doesNotContain(",-,");
  }
}
