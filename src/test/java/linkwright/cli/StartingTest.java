package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.console.Exit;
import linkwright.cli.console.TraceFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartingTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @Nested
  class Without_a_terminal {
    @Test
    void the_demos_plan_and_first_step_are_told_and_nothing_is_written() {
      assertThat(line.start(StartOptions.NONE)).isZero();
      assertThat(line.out())
          .contains(
              "(demo)", "Chain weighs: ", "Wire to take", "Step 1 of ", "Do: ", "Still to do: ");
      assertThat(line.err()).isEmpty();
      assertThat(line.home()).doesNotExist();
    }

    @Test
    void the_job_last_worked_on_is_told_where_there_is_one() throws IOException {
      line.typing(List.of("esc", "quit"), "walk", "--plain", "--new", "Window chain");
      Path book = line.home().resolve("jobs/window-chain.yaml");
      String before = Files.readString(book);
      assertThat(line.start(StartOptions.NONE)).isZero();
      assertThat(line.out()).contains("Window chain", "There is no plan yet.", "Step 1 of ");
      assertThat(book).hasContent(before);
    }

    @Test
    void what_is_wrong_with_the_users_files_is_told_apart() {
      line.file("home/settings.yaml", "format: 1\ntheme: pink\n");
      assertThat(line.start(StartOptions.NONE)).isZero();
      assertThat(line.err()).contains("settings.yaml:2:8: ", "pink");
    }

    /** An editor's shell reads and writes through a pipe. */
    @Test
    void plain_lines_are_walked_where_lines_are_all_that_is_taken() {
      int exit = line.start(StartOptions.NONE, Map.of("TERM", "dumb"), List.of("bench", "quit"));
      assertThat(exit).isZero();
      assertThat(line.out()).contains("An empty line: bench.", "Left.");
    }

    @Test
    void plain_lines_are_walked_where_they_are_wished_for() {
      StartOptions plain = StartOptions.of("--plain").orElseThrow().orThrow();
      assertThat(line.start(plain)).isZero();
      assertThat(line.out()).contains("An empty line: bench.", "Left.");
    }
  }

  @Nested
  class Options {
    @Test
    void are_read_by_hand_when_there_is_nothing_else() {
      StartOptions options =
          StartOptions.of("--home", "/x", "--window", "--theme=light", "--font-size", "24")
              .orElseThrow()
              .orThrow();
      assertThat(options)
          .isEqualTo(
              new StartOptions(
                  Optional.of("/x"), true, Optional.of("light"), Optional.of(24), false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "--help", "--version", "-h", "--hom"})
    void leave_everything_else_to_the_commands(String argument) {
      assertThat(StartOptions.of("--window", argument)).isEmpty();
    }

    @Test
    void that_cannot_be_are_told_in_a_sentence() {
      assertThat(problem("--theme", "pink"))
          .isEqualTo("There is no theme \"pink\": take one of dark, light, high-contrast, plain.");
      assertThat(problem("--font-size", "4")).contains("whole number from 8 to 72");
      assertThat(problem("--home")).isEqualTo("--home needs a value after it: --home DIR.");
    }

    private String problem(String... arguments) {
      return StartOptions.of(arguments).orElseThrow().problem().orElseThrow();
    }
  }

  @Nested
  class A_window_that_cannot_be_opened {
    @Test
    void is_told_in_a_sentence_and_the_program_goes_on_without() {
      assertThat(line.run("--window")).isZero();
      assertThat(line.err()).startsWith("No window can be opened here");
      assertThat(line.out()).contains("Still to do: ");
    }

    @Test
    void is_told_only_where_one_was_wished_for() {
      assertThat(line.run()).isZero();
      assertThat(line.err()).isEmpty();
    }
  }

  @Nested
  class The_version {
    @Test
    void is_that_of_the_build_file() throws IOException {
      assertThat(line.run("--version")).isZero();
      assertThat(line.out()).matches("linkwright [0-9]+\\.[0-9]+\\.[0-9]+[^\\s]*\n");
      String version = line.out().strip().substring("linkwright ".length());
      assertThat(Files.readString(Path.of("pom.xml")))
          .contains("<artifactId>linkwright</artifactId>\n  <version>" + version + "<");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "walk", "check", "new-routine", "jobs", "merge", "reckon"})
    void stands_beside_the_help_of_every_command(String command) {
      assertThat(line.run(command, "--help")).isZero();
      assertThat(line.out()).contains("Usage: linkwright " + command, "--home");
      assertThat(line.run(command, "--version")).isZero();
    }
  }

  @Nested
  class A_fault_of_the_program {
    @Test
    void is_one_sentence_that_says_where_the_details_are() throws IOException {
      linkwright.files.Home home = new linkwright.files.Home(line.home());
      String told = TraceFile.keep(home, new IllegalStateException("a bug"), line.instant());
      assertThat(told).doesNotContain("IllegalStateException").contains("trouble-20261102-080000");
      Path details = line.home().resolve("trouble-20261102-080000.txt");
      assertThat(Files.readString(details)).contains("IllegalStateException: a bug", "\tat ");
    }
  }

  @Nested
  class Jobs_and_merge {
    private String demoBook() {
      return line.home().resolve("jobs/lighthouse-keeper-s-bracelet-demo.yaml").toString();
    }

    @Test
    void an_empty_tray_is_told() {
      assertThat(line.run("jobs")).isZero();
      assertThat(line.out()).isEqualTo("The tray is empty.\n");
    }

    @Test
    void two_books_of_one_job_become_one() throws IOException {
      line.typing(List.of("note one", "quit"), "walk", "--plain");
      Path first = folder.resolve("first.yaml");
      Files.copy(Path.of(demoBook()), first);
      line.typing(List.of("note two", "quit"), "walk", "--plain");
      String into = folder.resolve("both.yaml").toString();

      assertThat(line.run("merge", first.toString(), demoBook(), "--into", into)).isZero();

      assertThat(line.out()).contains("both.yaml, 4 entries.");
      // What is united changes no plan here: each book alone and both together say one chain.
      assertThat(line.out().lines().filter(says -> says.contains("finished length")))
          .hasSize(3)
          .allMatch(says -> says.matches(".*: \\d+ links, finished length \\d.*"))
          .anyMatch(says -> says.startsWith(first + " by itself: "))
          .anyMatch(says -> says.startsWith("United: "));
      assertThat(Files.readString(Path.of(into))).contains("\"one\"", "\"two\"");
      assertThat(line.run("check", into)).isZero();
      assertThat(line.run("merge", first.toString(), demoBook(), "--into", into))
          .isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("is there already");
    }

    @Test
    void a_book_that_is_not_there_is_wrong_use() {
      assertThat(line.run("merge", "a.yaml", "b.yaml", "--into", "c.yaml"))
          .isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).isEqualTo("There is no book a.yaml.\n");
    }
  }
}
