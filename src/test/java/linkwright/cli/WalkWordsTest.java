package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a word of the plain walk does wherever it is typed, and how its examples read. */
class WalkWordsTest {
  private static final String PLAN =
      """
      format: 1
      job: Window chain
      metal: copper
      wire: 0.8 mm
      link: {pattern: scroll, length: 24 mm, width: 5.6 mm}
      ring: {inside: 4 mm}
      finished-length: 22 cm
      stock: [2.5 m]
      """;

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @Test
  void a_field_without_a_list_says_so_and_gives_its_example() {
    line.typing(
        List.of("copper", "list", "esc", "quit"), "walk", "--plain", "--new", "Window chain");
    assertThat(line.out())
        .contains("There is no list for this. Example: 0.9 mm.")
        .doesNotContain("Anything can be written here.");
  }

  @Test
  void a_flame_that_is_lit_is_entered_from_the_reckoner_too() {
    List<String> typed = new ArrayList<>(List.of("reckoner", "lit"));
    boolean[] asked = {false};
    line.talking(
        heard -> {
          asked[0] |= heard.contains("An empty line: torch lit");
          return asked[0] && typed.isEmpty()
              ? Optional.empty()
              : Optional.of(asked[0] ? typed.remove(0) : "");
        },
        "walk",
        "--plain");
    assertThat(line.out()).contains("Reckoner.", "Entered: hot work: lit.");
  }

  @Test
  void an_entry_that_is_not_there_is_told() {
    line.typing(List.of("strike 99 miscounted", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("There is no entry 99 to strike.");
  }

  @Test
  void what_is_struck_is_named_with_what_brings_it_back() {
    line.typing(
        List.of("note blue tongs", "strike 2 oops", "undo book", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain",
        "--plan",
        line.file("window.yaml", PLAN).toString());
    assertThat(line.out())
        .containsPattern("Struck: entry 2, plan set.*; undo book takes that back\\.")
        .contains("Undone: ");
  }

  @Test
  void an_entry_that_is_struck_already_is_not_struck_again() throws IOException {
    line.typing(
        List.of("strike 2 oops", "strike 2 oops", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain",
        "--plan",
        line.file("window.yaml", PLAN).toString());
    assertThat(line.out())
        .containsPattern("Entry 2 is struck already, by entry \\d+\\. Nothing was entered\\.");
    assertThat(Files.readString(line.home().resolve("jobs/window-chain.yaml")).split("struck", -1))
        .hasSize(2);
  }

  @Test
  void a_sort_is_found_by_its_singular_too() {
    line.typing(List.of("help solder", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("There are: ").doesNotContain("Nothing is called “solder”");
  }

  @Test
  void what_was_refused_is_not_told_as_what_stands_there() {
    line.typing(
        List.of("finished length: what if", "<", "esc", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain");
    assertThat(line.out()).doesNotContain("Now: what if").contains("Write it like this: 450 mm.");
  }

  @Test
  void an_inch_user_reads_no_millimetre_that_she_did_not_type() {
    line.file("home/settings.yaml", "format: 1\nunits: inch\nwords: american\n");
    line.typing(
        List.of(
            "help",
            "sterling",
            "0.8 mm",
            "",
            "16 mm",
            "6 mm",
            "",
            "450 mm",
            "=",
            "plan",
            "?",
            "esc",
            "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain");
    String told =
        line.out().replaceAll("(?m)^(Thickness|Link length|Link width): [0-9.]+ mm.*$", "");
    told = told.replaceAll("(?m)^Finished length: 450 mm.*$", "");
    told = told.replaceAll("\\(typed as (0\\.8|16|6|450) mm\\)", "");
    assertThat(told).contains("6 times").doesNotContainPattern("\\d mm\\b");
    assertThat(line.out()).contains("Finished length (clasp and its rings in it, 18 in)?");
  }

  @Test
  void a_command_of_a_command_has_its_own_help() {
    assertThat(line.run("help", "reckon", "pull")).isZero();
    assertThat(line.out()).contains("Usage: linkwright reckon pull", "--inside");
    assertThat(line.run("help", "reckon", "pul")).isEqualTo(2);
    assertThat(line.err()).contains("Did you mean pull?");
  }
}
