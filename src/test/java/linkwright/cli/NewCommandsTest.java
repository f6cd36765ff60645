package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linkwright.coach.keys.Act;
import linkwright.plan.WishKeys;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What there is is listed, files to start from are written, answers come in every form. */
class NewCommandsTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"metals", "solders", "patterns", "clasps", "routines"})
  void what_there_is_is_listed_in_every_form(String listed) {
    assertThat(line.run(listed)).isZero();
    int lines = line.out().split("\n").length;
    assertThat(lines).isGreaterThan(2);
    assertThat(line.run(listed, "--as", "csv")).isZero();
    assertThat(line.out().split("\n")).hasSize(lines + 1);
    assertThat(line.out()).startsWith("id,");
    assertThat(line.run(listed, "--as", "json")).isZero();
    assertThat(line.out()).startsWith("{").contains("\"" + listed + "\": [");
    assertThat(line.run(listed, "--as", "yaml")).isZero();
    assertThat(line.out()).startsWith(listed + ":");
  }

  @Test
  void a_broken_bench_or_drawer_stops_no_plan_and_is_told_with_its_place() throws IOException {
    Path plan = folder.resolve("cable.yaml");
    assertThat(line.run("new-plan", plan.toString())).isZero();
    assertThat(line.run("plan", plan.toString())).as(line.err()).isZero();
    String whole = line.out();
    Files.createDirectories(line.home());
    Files.writeString(line.home().resolve("bench.yaml"), "format: 1\nkerf: [oops\n");
    Files.writeString(line.home().resolve("drawer.yaml"), "garbage: {\n");
    assertThat(line.run("plan", plan.toString())).isZero();
    assertThat(line.out()).isEqualTo(whole);
    assertThat(line.err()).contains("bench.yaml:3", "drawer.yaml");
    assertThat(line.run("plan", plan.toString(), "--no-bench")).isZero();
    assertThat(line.err()).doesNotContain("bench.yaml:3");
  }

  @Test
  void a_list_for_reading_has_units_and_no_keys() {
    for (String listed : List.of("metals", "solders", "clasps", "patterns", "routines")) {
      assertThat(line.run(listed)).isZero();
      assertThat(line.out()).as(listed).doesNotContain(" mm 1", " g cm3", " from c ", "permille");
    }
    assertThat(line.run("routines")).isZero();
    assertThat(line.out()).contains("level practised; repeat 2 links + 2 round rings");
    assertThat(line.run("patterns")).isZero();
    assertThat(line.out()).contains("usual ring inside 3 mm; usual ring wire 0.9 mm");
    line.run("metals");
    assertThat(line.out()).contains("g/cm³", "°C", "‰");
  }

  @Test
  void a_sum_answers_as_json_and_csv() {
    assertThat(
            line.run(
                "reckon",
                "ring",
                "--wire",
                "0.9 mm",
                "--inside",
                "3 mm",
                "--metal",
                "sterling",
                "--as",
                "json"))
        .as(line.err())
        .isZero();
    assertThat(line.out()).startsWith("{").endsWith("}\n");
  }

  @Test
  void a_new_plan_is_right_as_it_is_written() {
    String plan = folder.resolve("mine.yaml").toString();
    assertThat(line.run("new-plan", plan)).isZero();
    assertThat(line.run("check", plan)).as(line.out()).isZero();
    assertThat(line.run("plan", plan)).as(line.err()).isZero();
    assertThat(line.run("new-plan", plan)).isEqualTo(1);
  }

  @Test
  void a_new_pattern_is_right_as_it_is_written() {
    assertThat(line.run("new-pattern", "my-link", "--to", folder.toString())).isZero();
    assertThat(line.run("check", folder.resolve("my-link.yaml").toString()))
        .as(line.out())
        .isZero();
  }

  @Test
  void a_hyphen_is_standard_input() throws IOException {
    String plan = folder.resolve("mine.yaml").toString();
    line.run("new-plan", plan);
    List<String> typed = Files.readAllLines(Path.of(plan));
    assertThat(line.typing(typed, "plan", "-")).as(line.err()).isZero();
    assertThat(line.out()).contains("Links: ");
  }

  @Test
  void one_page_tells_every_key_of_every_file() {
    assertThat(line.run("file-keys")).isZero();
    assertThat(line.out()).contains(WishKeys.ALL);
    for (Act act : Act.values()) {
      assertThat(line.out()).contains("| `" + act.id() + "` |");
    }
    assertThat(line.out()).contains("`fire-watch`", "`font-size`");
  }

  @Test
  void shells_and_readers_get_their_pages() {
    assertThat(line.run("completion", "bash")).isZero();
    assertThat(line.out()).contains("reckon", "new-plan");
    assertThat(line.out())
        .contains("ROUTINE_pos_param_args=(\"bar-and-ring\"")
        .contains("\"curb-filed\" ", "\"keys\" \"bench\" \"drawer\"");
    assertThat(line.run("completion", "zsh")).isZero();
    assertThat(line.out()).contains("bashcompinit");
    assertThat(line.run("man")).isZero();
    assertThat(line.out()).startsWith(".TH LINKWRIGHT 1").contains(".SS linkwright reckon ring");
    assertThat(line.run("help", "plan")).isZero();
    assertThat(line.out()).contains("Example: linkwright plan");
  }

  @Test
  void what_is_needed_stands_bare_in_the_help_of_a_sum() {
    assertThat(line.run("reckon", "ring", "--help")).isZero();
    assertThat(line.out())
        .contains("--wire=WIRE", "[--kerf=LENGTH]", "Example: linkwright reckon ring");
  }

  @Test
  void a_job_is_opened_by_its_name_in_the_tray() {
    line.typing(List.of("esc", "quit"), "walk", "--plain", "--new", "Window chain");
    assertThat(line.typing(List.of("esc", "quit"), "walk", "--plain", "window CHAIN")).isZero();
    assertThat(line.err()).doesNotContain("There is no job");
  }
}
