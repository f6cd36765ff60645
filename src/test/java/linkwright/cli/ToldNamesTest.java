package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found under a name is told as it is, and not as if it were not there. */
class ToldNamesTest {
  @TempDir private Path folder;
  private Commandline line;
  private Path jobs;

  @BeforeEach
  void aJob() {
    line = new Commandline(folder);
    assertThat(line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate chain")).isZero();
    jobs = line.home().resolve("jobs");
  }

  @Test
  void several_jobs_of_one_name_are_told_by_their_books() throws IOException {
    Path first = jobs.resolve("gate-chain.yaml");
    Files.copy(first, jobs.resolve("one.yaml"));
    Files.move(first, jobs.resolve("two.yaml"));
    Files.deleteIfExists(jobs.resolve("gate-chain.last"));
    assertThat(line.typing(List.of("quit"), "walk", "--plain", "gate CHAIN")).isNotZero();
    assertThat(line.err())
        .contains("Several jobs are called Gate chain", "one", "two")
        .doesNotContain("Did you mean");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "again", "export"})
  void a_command_asks_which_of_several_jobs_of_one_name_is_meant(String command) {
    assertThat(line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate chain")).isZero();
    assertThat(jobs.resolve("gate-chain-2.yaml")).exists();
    assertThat(line.run(command, "Gate chain")).isEqualTo(Exit.WRONG_USE);
    assertThat(line.out()).isEmpty();
    assertThat(line.err())
        .contains("Several jobs are called Gate chain", "gate-chain, gate-chain-2")
        .doesNotContain("Did you mean");
    line.run(command, "gate-chain-2");
    assertThat(line.err()).doesNotContain("Several jobs");
  }

  @Test
  void a_job_is_found_by_its_name_whatever_its_book_is_called() throws IOException {
    Files.move(jobs.resolve("gate-chain.yaml"), jobs.resolve("other.yaml"));
    Files.deleteIfExists(jobs.resolve("gate-chain.last"));
    assertThat(line.run("export", "gate CHAIN")).as(line.err()).isZero();
    assertThat(line.out()).contains("Gate chain");
  }

  @Test
  void a_plan_that_is_no_ordinary_file_is_there_but_no_plan() throws IOException {
    Path plan = Files.createDirectories(folder.resolve("plan.yaml"));
    assertThat(
            line.typing(
                List.of("quit"), "walk", "--plain", "--new", "New", "--plan", plan.toString()))
        .isNotZero();
    assertThat(line.err())
        .contains("is no plan file: it is no ordinary file")
        .doesNotContain("There is no plan file");
  }

  @Test
  void a_first_line_that_stands_twice_or_is_gone_is_told_by_check_and_on_opening()
      throws IOException {
    Path book = jobs.resolve("gate-chain.yaml");
    String text = Files.readString(book);
    String header = text.substring(0, text.indexOf('\n') + 1);

    Files.writeString(book, text + header);
    assertThat(line.run("check", book.toString())).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out()).contains("begins with stands a second time");
    line.typing(List.of("quit"), "walk", "--plain", "gate-chain");
    assertThat(line.out() + line.err()).contains("begins with stands a second time");

    Files.writeString(book, text.substring(header.length()));
    line.typing(List.of("quit"), "walk", "--plain", "gate-chain");
    assertThat(line.out() + line.err()).contains("begins with is missing or was changed");
  }
}
