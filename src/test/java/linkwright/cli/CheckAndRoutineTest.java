package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckAndRoutineTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @Nested
  class Check {
    @Test
    void finds_no_problem_in_what_came_with_the_program() {
      assertThat(line.run("check")).isZero();
      assertThat(line.out()).isEqualTo("No problem found.\n");
    }

    @Test
    void tells_each_problem_with_file_line_and_column_and_counts_them() {
      Path file =
          line.file(
              "mine.yaml", "format: 1\nmetal: stirling\nwire: -3 mm\nfinished-length: 9 cm\n");
      assertThat(line.run("check", file.toString())).isEqualTo(Exit.PROBLEMS);
      assertThat(line.out().lines())
          .anyMatch(each -> each.startsWith(file + ":2:8: ") && each.contains("sterling"))
          .anyMatch(each -> each.startsWith(file + ":3:7: "));
      assertThat(line.out()).endsWith(" problems found.\n");
    }

    @Test
    void finds_what_is_wrong_in_the_users_own_folder() {
      line.file("home/settings.yaml", "format: 1\nunit: inch\n");
      line.file("home/keys.yaml", "format: 1\nkeys: {throug: [x]}\n");
      line.file("home/routines/own.yaml", "format: 1\nrutine: own\n");
      assertThat(line.run("check")).isEqualTo(Exit.PROBLEMS);
      assertThat(line.out()).contains("units", "through", "routine");
    }

    @Test
    void takes_a_path_that_is_not_there_for_wrong_use() {
      assertThat(line.run("check", "nowhere")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).isEqualTo("There is no file or folder nowhere.\n");
    }

    @Test
    void tells_a_book_that_was_damaged() throws IOException {
      line.typing(java.util.List.of("bench", "quit"), "walk", "--plain");
      Path book = only(line.home().resolve("jobs"));
      Files.writeString(book, Files.readString(book).replace("1.0 mm", "1.9 mm"));
      assertThat(line.run("check")).isEqualTo(Exit.PROBLEMS);
      assertThat(line.out()).contains(book + ":", "1 problem found.");
    }
  }

  private static Path only(Path jobs) throws IOException {
    try (var files = Files.list(jobs)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).findFirst().orElseThrow();
    }
  }

  @Nested
  class New_routine {
    @Test
    void writes_a_file_that_passes_the_check_and_can_be_walked() {
      assertThat(line.run("new-routine", "garden-gate")).isZero();
      Path file = line.home().resolve("routines/garden-gate.yaml");
      assertThat(file)
          .content()
          .contains("routine: \"garden-gate\"", "title: \"Garden gate\"", "# ");
      assertThat(line.run("check", file.toString())).isZero();
      assertThat(line.run("check")).isZero();
      int walked =
          line.typing(
              java.util.List.of("quit"),
              "walk",
              "--plain",
              "--new",
              "A gate",
              "--routine",
              "garden-gate");
      assertThat(walked).isZero();
    }

    @Test
    void never_writes_over_a_file() {
      Path file = line.file("home/routines/garden-gate.yaml", "mine");
      assertThat(line.run("new-routine", "garden-gate")).isEqualTo(Exit.PROBLEMS);
      assertThat(file).hasContent("mine");
      assertThat(line.err()).contains("is there already, and stays as it is");
    }

    @Test
    void writes_into_another_folder_where_told() {
      Path to = folder.resolve("elsewhere");
      assertThat(line.run("new-routine", "garden-gate", "--to", to.toString())).isZero();
      assertThat(to.resolve("garden-gate.yaml")).exists();
    }

    @Test
    void says_what_a_name_is_made_of() {
      assertThat(line.run("new-routine", "Garden Gate")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("such as garden-gate");
    }
  }

  @Test
  void aFileOfKeysOrOfStudentsIsJudgedUnderWhateverName() throws IOException {
    Path keys =
        Files.writeString(folder.resolve("mine.yaml"), "format: 1\nkeys: {redoo: [q], undo: qq}\n");
    assertThat(line.run("check", keys.toString())).isEqualTo(1);
    assertThat(line.out())
        .contains("Nothing that a key can do is called \"redoo\".", "\"qq\" names no key");
    Path students =
        Files.writeString(folder.resolve("hers.yaml"), "format: 1\nstudents: {s-1: Mara}\n");
    assertThat(line.run("check", students.toString())).as(line.out()).isZero();
    Path foreign = Files.writeString(folder.resolve("other.yaml"), "redo: [q1, q2]\n");
    assertThat(line.run("check", foreign.toString())).isEqualTo(1);
    assertThat(line.out()).contains("No key says what sort of file this is.");
  }
}
