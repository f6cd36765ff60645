package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A line typed into a form of the walk names the one step or person that is meant, or nothing. */
@Timeout(60)
class FormNamesWalkTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  private String books(String place) throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.list(line.home().resolve(place))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
        all.append(Files.readString(file));
      }
    }
    return all.toString();
  }

  private void sign(String... steps) {
    line.typing(
        Stream.of(
                Stream.of("student", "sign-step", "EK", steps[0], "", ""),
                Stream.of(steps).skip(1),
                Stream.of("esc", "quit"))
            .flatMap(each -> each)
            .toList(),
        "lesson",
        "scroll-and-ring",
        "--student",
        "Mara",
        "--plain");
  }

  @Test
  void a_mark_is_filed_on_the_step_of_that_very_title() throws IOException {
    sign("anneal the WIRE");
    assertThat(books("students")).as(line.out()).contains("scroll-and-ring/anneal");
    assertThat(books("students")).doesNotContain("wire-drawing/");
  }

  @Test
  void a_part_of_a_title_signs_nothing_and_names_what_it_may_be() throws IOException {
    sign("marked, where", "Anneal the w", "Have it marked, where a mark is due");
    assertThat(line.out())
        .contains("“marked, where” alone names no one step. It may be “Have it marked, where")
        .contains("“Anneal the w” alone names no one step.")
        .contains("“Anneal the wire (scroll and ring)”")
        .doesNotContain("scroll-and-ring/")
        .contains("“Have it marked, where a mark is due” alone names no one step.");
    assertThat(books("students")).doesNotContain("EK");
  }

  @Test
  void where_steps_share_a_title_the_open_jobs_is_meant() throws IOException {
    sign("esc");
    line.typing(
        List.of(
            "", "who Mara", "student", "sign-step", "EK", "make the bench ready", "", "", "quit"),
        "walk",
        "--plain");
    assertThat(books("students")).as(line.out()).contains("scroll-and-ring/");
  }

  @Test
  void the_book_and_the_mark_are_of_whoever_works_or_of_the_one_named() throws IOException {
    for (String name : List.of("Mara", "Ines")) {
      line.typing(List.of("quit"), "lesson", "scroll-and-ring", "--student", name, "--plain");
    }
    String names = Files.readString(line.home().resolve("students.yaml"));
    String ines = names.replaceAll("(?s).*(s-[a-z0-9]{5}): \"Ines.*", "$1");
    line.typing(
        List.of(
            "",
            "who Ines",
            "1",
            "",
            "student",
            "bench",
            "sign",
            "EK",
            "make the bench ready",
            "",
            "it is",
            "=",
            "quit"),
        "walk",
        "--plain");
    assertThat(line.out()).contains("The book of Ines").doesNotContain("The book of Mara");
    assertThat(Files.readString(line.home().resolve("students/" + ines + ".yaml")))
        .as(line.out())
        .contains("EK");
    line.typing(List.of("", "student Mara", "student Mira", "quit"), "walk", "--plain");
    assertThat(line.out())
        .contains("The book of Mara", "No student is called “Mira”. Did you mean Mara?");
    line.typing(List.of("", "who Edda", "=", "student", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("Your book").doesNotContain("The book of Mara");
  }

  @Test
  void a_word_of_the_walk_is_no_persons_name_and_who_corrects_one() throws IOException {
    line.typing(
        List.of("", "who", "where", "bench", "look", "note a thing", "step-away", "who Jo", "quit"),
        "walk",
        "--plain");
    assertThat(line.out())
        .contains("“where” begins with a word of the walk", "“note a thing” begins with a word")
        .contains("At the bench: “Jo”.")
        .doesNotContain("At the bench: “who");
    assertThat(books("jobs")).contains("Jo").doesNotContain("a thing", "step-away");
  }

  /** An entry is struck wherever one is, and whoever leaves the signing is back at the bench. */
  @Test
  void one_is_back_where_one_was_after_a_thing_done_elsewhere() {
    line.typing(
        List.of("", "bench", "sign", "esc", "where", "student", "strike 2 wrong", "where", "quit"),
        "walk",
        "--plain");
    assertThat(line.out())
        .contains("; step 1 of ")
        .contains("; your book.")
        .doesNotContain("Not for now", "; places of the job");
    line.typing(List.of("esc", "book", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("struck entry 2: wrong.");
  }

  @Test
  void what_is_for_the_walk_is_never_written_into_a_field() throws IOException {
    line.typing(
        List.of("", "note", "undo", "find pickle", "help note", "\"undo\"", "quit"),
        "walk",
        "--plain");
    assertThat(line.out())
        .contains("“undo” is for the walk, and a form is open: nothing is entered.")
        .contains("“find pickle” is for the walk")
        .contains("It stands in the book with its time");
    assertThat(books("jobs")).contains("\"undo\"").doesNotContain("find pickle");
  }

  @Test
  void a_fields_name_is_never_its_value() throws IOException {
    line.typing(List.of("", "card", "card customer: Ida", "card", "quit"), "walk", "--plain");
    line.typing(List.of("", "weigh", "length", "esc", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("“length” names a field. Empty now. To set it write its name");
    assertThat(line.out()).doesNotContain("does not begin with a number");
  }

  @Test
  void in_double_quotes_a_word_is_a_name_all_the_same() {
    line.typing(List.of("", "who", "\"Bench\"", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("At the bench: “Bench”.");
  }

  @Test
  void list_and_what_are_answered_of_any_field_and_are_no_value() {
    line.typing(
        List.of("", "plan", "list", "metal: list", "list metal", "what metal", "what", "quit"),
        "walk",
        "--plain");
    assertThat(line.out())
        .contains("Write list and the name of a field", "Write what and the name of a field")
        .doesNotContain("is not a known metal");
    assertThat(line.out().split("sterling: ", -1)).as(line.out()).hasSizeGreaterThan(2);
  }

  /** In the field of the wire it became the wire. */
  @Test
  void a_command_of_two_words_is_no_value_of_a_field_that_takes_no_words() {
    line.typing(
        List.of("", "plan", "wire: 0.9 mm", "wire", "reckoner ring", "quit"), "walk", "--plain");
    assertThat(line.out()).contains("“reckoner ring” is for the walk, and a form is open");
    assertThat(line.out()).doesNotContain("Wire thickness: reckoner");
  }

  @Test
  void list_and_a_sort_lists_that_sort() {
    line.typing(List.of("", "list metals", "lists metals", "quit"), "walk", "--plain");
    assertThat(line.out().split("There are: [^.]*; ", -1)).as(line.out()).hasSize(3);
  }

  @Test
  void list_outside_a_form_tells_what_can_be_listed_and_no_guess_is_a_flame() {
    line.typing(List.of("", "list", "lut", "shot", "quit"), "walk", "--plain");
    assertThat(line.out())
        .contains("There are: routines; ")
        .doesNotContain("mean lit?", "mean shut?");
  }

  @Test
  void once_brief_a_page_is_told_without_the_words_that_could_be_typed() {
    line.typing(List.of("", "brief", "repeat", "places", "quit"), "walk", "--plain");
    String since = line.out().split("Brief: one line a count.", -1)[1];
    assertThat(line.out()).contains("Or type ");
    assertThat(since).contains("An empty line: ").doesNotContain("Or type ");
  }
}
