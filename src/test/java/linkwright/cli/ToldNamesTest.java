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
        .isEqualTo(plan + " is a folder: name the plan file in it.\n")
        .doesNotContain("There is no plan file");
    String named = line.err();
    assertThat(line.run("plan", plan.toString())).isNotZero();
    assertThat(line.err()).isEqualTo(named);
  }

  @Test
  void a_rehearsal_asks_which_of_several_jobs_of_one_name_is_meant() {
    line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate chain");
    assertThat(line.typing(List.of("quit"), "rehearse", "--plain", "Gate chain")).isNotZero();
    assertThat(line.err())
        .contains("Several jobs are called Gate chain", "gate-chain, gate-chain-2")
        .doesNotContain("Nor is there", "There is no routine");
    assertThat(line.typing(List.of("quit"), "rehearse", "--plain", "gate CHAIN 9")).isNotZero();
    assertThat(line.err()).contains("There is no routine", "Nor is there a job of that name");
  }

  @Test
  void a_book_is_left_out_and_counts_again_by_the_name_of_its_job() {
    assertThat(line.run("hands", "--leave-out", "gate CHAIN")).as(line.err()).isZero();
    assertThat(line.home().resolve("hands.yaml")).content().contains("gate-chain");
    assertThat(line.run("hands", "--count", "Gate chain")).as(line.err()).isZero();
    assertThat(line.home().resolve("hands.yaml")).content().doesNotContain("gate-chain");
    assertThat(line.run("hands", "--count", "gate-chian")).isEqualTo(Exit.WRONG_USE);
    assertThat(line.err()).contains("There is no job \"gate-chian\". Did you mean gate-chain?");
    line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate chain");
    for (String option : List.of("--leave-out", "--count")) {
      assertThat(line.run("hands", option, "Gate chain")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("Several jobs are called Gate chain", "gate-chain-2");
    }
  }

  @Test
  void a_book_that_is_gone_counts_again_by_its_name() throws IOException {
    line.run("hands", "--leave-out", "gate-chain");
    Files.move(jobs.resolve("gate-chain.yaml"), folder.resolve("kept.yaml"));
    line.run("hands", "--count", "gate-chain");
    assertThat(line.home().resolve("hands.yaml")).content().doesNotContain("gate-chain");
  }

  @Test
  void rows_are_told_with_the_job_and_the_book_that_they_went_into() throws IOException {
    Files.move(jobs.resolve("gate-chain.yaml"), jobs.resolve("anna.yaml"));
    Files.deleteIfExists(jobs.resolve("gate-chain.last"));
    line.typing(List.of("quit"), "walk", "--plain", "--new", "Anna");
    Path rows = line.file("t.csv", "blank (mm),wire (mm),length (mm)\n38,1.2,15\n");
    assertThat(line.run("take-in", "anna", rows.toString(), "--try")).as(line.err()).isZero();
    assertThat(line.out())
        .contains("1 row can be entered into Gate chain (book anna). Nothing was entered.");
    assertThat(line.run("take-in", "anna", rows.toString())).as(line.err()).isZero();
    assertThat(line.out()).isEqualTo("1 row entered into Gate chain (book anna).\n");
    Path lots = line.file("l.csv", "lot,what,metal,mass (g)\nmarch,wire,sterling,20\n");
    assertThat(line.run("take-in", "drawer", lots.toString())).as(line.err()).isZero();
    assertThat(line.out()).isEqualTo("1 row entered into the drawer.\n");
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
