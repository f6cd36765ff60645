package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed in a lesson that is heard: nothing but leaving leaves its question. */
class LessonWordsTest {
  private static final String STANDS = "The question stands: a number answers it, repeat says";
  private static final String FIRST = "The question that stands here is answered first.";

  /** What the page itself offers, flames, and leaving. */
  private static final Set<String> OFFERED = Set.of("student", "class", "shut", "quit");

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  /** Every word of the walk as its help tells them, typed while a question stands. */
  @Test
  void no_word_leaves_a_question_but_those_that_the_page_offers() {
    line.typing(List.of("help", "quit"), "walk", "--plain");
    List<String> words = new ArrayList<>();
    Matcher word = Pattern.compile("(?m)^([a-z]+): .").matcher(line.out());
    while (word.find()) {
      if (!OFFERED.contains(word.group(1))) {
        words.add(word.group(1));
      }
    }
    assertThat(words).contains("redo", "bench", "find", "lesson", "rehearse", "who", "note");
    words.addAll(List.of("esc", "redo 3", "next-step", "round", "find ring", "words ring"));
    List<String> typed = new ArrayList<>();
    words.forEach(each -> typed.addAll(List.of(each, "where")));
    typed.addAll(List.of("0", "quit"));
    line.typing(typed, "lesson", "jump-rings", "--plain");
    assertThat(line.out().split("Here: Linkwright; lesson: [^\n]*in front stands: ", -1))
        .as(line.out())
        .hasSizeGreaterThan(words.size());
    assertThat(line.out())
        .contains(STANDS + " it again; quit leaves.", "Not so.")
        .doesNotContain("No job");
  }

  @Test
  void what_was_said_is_gone_on_from_before_any_word() {
    line.typing(List.of("0", "redo", "next", "", "quit"), "lesson", "jump-rings", "--plain");
    assertThat(line.out().split("First what was said: an empty line goes on", -1)).hasSize(3);
    assertThat(line.out()).contains("Left.").doesNotContain("Not for now");
  }

  /** A number that is no choice is no answer, however many digits it has. */
  @Test
  void a_number_that_is_no_choice_is_told_so() {
    for (String none : List.of("7", "12", "1234", "")) {
      line.typing(List.of(none, "quit"), "lesson", "jump-rings", "--plain");
      assertThat(line.out())
          .as(none)
          .contains(FIRST + " A number answers it, repeat says it again.")
          .contains("A number answers; repeat says the question again.")
          .doesNotContain("Not so.");
    }
  }

  @Test
  void at_the_bench_too() {
    line.typing(List.of("quit"), "lesson", "torch-practice", "--student", "Mara", "--plain");
    line.typing(
        List.of("", "", "", "", "quit"), "walk", "--new", "Anna", "--routine", "torch-practice");
    line.typing(List.of("who Mara", "7", "12", "", "quit"), "walk", "anna", "--plain");
    assertThat(line.out().split(FIRST, -1)).as(line.out()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(line.out()).doesNotContain("Not so.");
  }
}
