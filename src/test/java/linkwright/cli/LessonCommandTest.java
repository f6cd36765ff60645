package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons, rehearsals and reports from the command line, heard and not seen. */
class LessonCommandTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @Test
  void a_lesson_is_heard_answered_by_a_number_and_goes_on_by_an_empty_line() {
    line.typing(
        List.of("0", "", "1", "", "quit"), "lesson", "round-cable", "--student", "Mara", "--plain");
    assertThat(line.out())
        .contains("Mara, question 1 of 12.")
        .contains("1: ")
        .contains("0: I do not know.")
        .contains("Not so.")
        .contains("It is: ")
        .contains("An empty line: go on.");
  }

  @Test
  void each_verdict_is_told_whole_however_like_the_last_it_is() {
    line.typing(
        List.of("0", "", "0", "", "0", "", "0", "quit"), "lesson", "round-cable", "--plain");
    for (String told : List.of("Not so.", "Not answered.", "It is: ", "It comes back ")) {
      assertThat(line.out().split(told, -1)).as(told + line.out()).hasSize(5);
    }
  }

  @Test
  void no_answer_is_given_by_an_empty_line() {
    line.typing(List.of("", "", "quit"), "lesson", "round-cable", "--plain");
    assertThat(line.out()).contains("An empty line does nothing here.").doesNotContain("Not so.");
  }

  @Test
  void a_rehearsal_goes_on_and_back_by_words_and_writes_nothing() throws IOException {
    line.typing(List.of("", "next", "back", "quit"), "rehearse", "round-cable", "--plain");
    assertThat(line.out())
        .contains("step 1 of 17")
        .contains("step 2 of 17")
        .contains("step 3 of 17")
        .contains("60 times as fast");
    assertThat(line.home().resolve("jobs")).doesNotExist();
  }

  @Test
  void nothing_leaves_a_rehearsal_but_by_leaving() throws IOException {
    line.run("walk", "--new", "Anna", "--routine", "round-cable");
    String job = "anna";
    String before = Files.readString(line.home().resolve("jobs").resolve(job + ".yaml"));
    line.typing(
        List.of("3", "redo 1", "note kept?", "log", "bench", "cards", "next", "quit"),
        "rehearse",
        job,
        "--plain");
    assertThat(line.out().split("This is a rehearsal", -1)).as(line.out() + line.err()).hasSize(6);
    assertThat(line.out())
        .contains("step 2 of", "Left. It was a rehearsal: nothing was entered.")
        .contains("If so: Block spits")
        .doesNotContain("could not be written");
    assertThat(Files.readString(line.home().resolve("jobs").resolve(job + ".yaml")))
        .isEqualTo(before);
  }

  @Test
  void a_job_whose_flame_is_lit_is_rehearsed_and_the_flame_is_told_at_the_end() throws IOException {
    java.util.List<String> answers = new java.util.ArrayList<>(List.of("", "3", "lit", "3"));
    boolean[] open = {false};
    line.talking(
        heard -> {
          open[0] |= heard.contains("An empty line: torch lit");
          return answers.isEmpty()
              ? java.util.Optional.empty()
              : java.util.Optional.of(open[0] ? answers.remove(0) : "");
        },
        "walk",
        "--plain");
    assertThat(line.out()).contains("Entered: hot work: lit.");
    String job;
    try (var books = Files.list(line.home().resolve("jobs"))) {
      job =
          books
              .map(path -> String.valueOf(path.getFileName()))
              .filter(name -> name.endsWith(".yaml"))
              .findFirst()
              .orElseThrow()
              .replace(".yaml", "");
    }
    line.typing(List.of("next", "quit"), "rehearse", job, "--plain");
    assertThat(line.out())
        .contains("Rehearsal, step 2 of 28", "every flame out", "nothing was entered")
        .doesNotContain("No book is open");
  }

  @Test
  void a_report_names_her_by_her_id_unless_her_name_is_asked_for() {
    line.typing(List.of("0", "", "quit"), "lesson", "round-cable", "--student", "Mara", "--plain");
    for (String form : List.of("text", "yaml", "csv", "json")) {
      assertThat(line.run("student", "Mara", "--as", form)).as(line.err()).isZero();
      assertThat(line.out()).as(form).contains("what comes next").doesNotContain("Mara");
    }
    line.run("student", "Mara", "--names");
    assertThat(line.out()).contains("Mara");
    assertThat(line.run("student", "Mara", "--as", "csv")).isZero();
    assertThat(line.out())
        .startsWith("list,of,what,value,unit,plus_minus,from,says\n,,report of,s-")
        .contains("\n,,as of,20", "asked about,what comes next,known,0,");
    line.run("student", "Mara", "--seeds");
    assertThat(line.out()).contains("round-cable/next/");
    assertThat(line.run("class", "--as", "csv")).isZero();
    assertThat(line.out()).doesNotContain("Mara");
    assertThat(line.run("class", "--as", "json")).isZero();
    assertThat(line.out()).contains("\"value\": 0\n");
    assertThat(line.run("student", "Mara", "--as", "yaml")).isZero();
    assertThat(line.out()).containsPattern("what: missed\n +value: [1-9]\n");
  }

  @Test
  void a_class_brought_together_is_told_as_text_and_by_the_names_beside_the_books()
      throws IOException {
    Path three = folder.resolve("three");
    for (String name : List.of("Anna", "Ben")) {
      Commandline hers = new Commandline(three.resolve(name));
      hers.typing(List.of("0", "", "quit"), "lesson", "round-cable", "--student", name, "--plain");
    }
    assertThat(line.run("class", three.toString())).as(line.err()).isZero();
    assertThat(line.out()).contains("(Anna/", "(Ben/").doesNotContain("plan");
    assertThat(line.run("class", three.toString(), "--names")).isZero();
    assertThat(line.out()).contains("Who Anna,", "Who Ben,").doesNotContain("(Anna/");
    line.run("class", three.toString(), "--as", "csv");
    assertThat(line.out()).contains(three.toAbsolutePath() + ", read at ");
    assertThat(line.out()).doesNotContainPattern("-\\d\\d,\\d\\d:\\d\\d");
  }

  @Test
  void help_tells_the_words_that_do_something_there_and_none_of_the_bench() {
    line.typing(List.of("help", "quit"), "rehearse", "round-cable", "--plain");
    assertThat(line.out())
        .contains("next: the next step.", "cards: ", "quit: ")
        .doesNotContain("scrap:", "redo:", "bench:", "piles:", "weigh:", "so many come through");
    line.typing(List.of("help", "quit"), "lesson", "round-cable", "--plain");
    assertThat(line.out())
        .contains("class: ", "student: ", "where a question or a list is told, that answer")
        .doesNotContain("scrap:", "bench:", "weigh:", "so many come through");
  }

  @Test
  void the_words_that_a_rehearsal_offers_are_heeded() {
    line.typing(List.of("cautions", "quit"), "rehearse", "round-cable", "--plain");
    assertThat(line.out()).doesNotContain("This is a rehearsal: nothing is entered, and nothing");
  }

  @Test
  void the_reasons_of_a_rehearsed_step_are_told_whatever_side_of_it_is_shown() {
    line.typing(
        List.of("its cautions whole", "why", "words", "quit"),
        "rehearse",
        "round-cable",
        "--plain");
    assertThat(line.out())
        .contains("Why: ", "Wrong: ", "Words and a name tells more")
        .doesNotContain("There is no more to say here.");
  }

  /** Nothing is told of a step that a student has yet to name, and none of her words is lost. */
  @Test
  void in_front_of_a_step_words_of_the_bench_are_told_that_the_question_comes_first() {
    line.typing(List.of("quit"), "lesson", "torch-practice", "--student", "Mara", "--plain");
    line.typing(
        List.of("", "", "", "", "quit"), "walk", "--new", "Anna", "--routine", "torch-practice");
    List<String> words = List.of("look", "next", "all", "why", "cards", "words", "piles", "look");
    List<String> typed = new java.util.ArrayList<>(List.of("who Mara", "bench"));
    typed.addAll(words);
    typed.addAll(List.of("places", "book", "rehearse", "quit"));
    line.typing(typed, "walk", "anna", "--plain");
    assertThat(line.out())
        .contains("At the bench: “Mara”.", "The sitting before it is ended.")
        .contains("step 1: to be said before it is shown", "step opened: the one to be said first")
        .contains("What comes next is said before it is shown.")
        .containsPattern("at the bench: Mara\\.")
        .doesNotContain("Entered: sitting ended", "Look the torch over, cold, ")
        .doesNotContainPattern("\\bs-[a-z0-9]{5}\\b");
    assertThat(line.out().split("First the question: a number answers it", -1))
        .as(line.out())
        .hasSizeGreaterThanOrEqualTo(words.size() - 1);
    assertThat(line.out())
        .contains("Mara says how steps follow: press its number.")
        .contains("in which order are these done?")
        .doesNotContain("You are at the bench now", "no more to say", "Asbestos", "Arrestor.");
  }

  @Test
  void she_is_handed_over_and_removed_whole() throws IOException {
    line.typing(List.of("0", "", "quit"), "lesson", "round-cable", "--student", "Mara", "--plain");
    Path into = folder.resolve("mara.yaml");
    assertThat(line.run("student", "Mara", "--remove")).isEqualTo(1);
    assertThat(line.err()).contains("Nothing is removed yet", "Mara", "--hand-over FILE", "--yes");
    assertThat(line.run("student", "Mara")).isZero();
    assertThat(line.run("student", "Mara", "--hand-over", into.toString(), "--remove", "--yes"))
        .isZero();
    assertThat(line.out()).containsPattern("her book of \\d+ entries and her name, Mara");
    assertThat(Files.readString(into)).contains("question-asked").doesNotContain("Mara");
    assertThat(line.run("student", "Mara")).isEqualTo(2);
    assertThat(Files.readString(line.home().resolve("students.yaml"))).doesNotContain("Mara");
  }

  @Test
  void the_own_book_is_told_as_the_own() {
    line.typing(List.of("0", "", "quit"), "lesson", "round-cable", "--plain");
    assertThat(line.run("student", "--remove")).isEqualTo(1);
    assertThat(line.err()).contains("take away your book, its ").doesNotContain("her name");
    Path into = folder.resolve("own.yaml");
    assertThat(line.run("student", "--hand-over", into.toString(), "--remove", "--yes")).isZero();
    assertThat(line.out()).contains("your book is in ").doesNotContain("her book", "her name");
  }

  @Test
  void a_routine_that_there_is_not_is_told_with_the_nearest() {
    assertThat(line.run("lesson", "round-cabel")).isEqualTo(2);
    assertThat(line.err()).contains("Did you mean round-cable?");
    assertThat(line.run("rehearse", "round-cabel")).isEqualTo(2);
  }
}
