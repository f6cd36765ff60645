package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class PlainWalkTest {
  private static final String PLAN =
      """
      format: 1
      job: Ferry bell pull
      metal: copper
      wire: 0.8 mm
      link: {pattern: scroll, length: 24 mm, width: 5.6 mm}
      ring: {inside: 4 mm}
      finished-length: 22 cm
      clasp: {length: 15 mm, mass: 1.5 g}
      stock: [2.5 m]
      """;

  private static final List<String> BEFORE_THE_BENCH =
      List.of(
          "log length 24.1 mm; width 5.6 mm; make the next right",
          "sample",
          "trial",
          "log links 2; rings 3; hung 58 mm",
          "follow",
          "bench");

  private static final List<String> AFTER_THE_BENCH =
      List.of(
          "weigh chain 3 g; length 22.1 cm; filings 0.4 g",
          "close",
          "start with the longer blank",
          "",
          "quit");

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  private Jeweller jeweller(List<String> first, List<String> last, int stopAfter) {
    return new Jeweller(first, last, stopAfter, () -> line.wait(Duration.ofMinutes(31)));
  }

  private int walkNew(Commandline.Typist typist) {
    String plan = line.file("ferry.yaml", PLAN).toString();
    return line.talking(typist, "walk", "--plain", "--new", "Ferry bell pull", "--plan", plan);
  }

  private String book() {
    try {
      return Files.readString(line.home().resolve("jobs/ferry-bell-pull.yaml"));
    } catch (IOException trouble) {
      throw new java.io.UncheckedIOException(trouble);
    }
  }

  @Nested
  class A_whole_job {
    @Test
    void goes_from_new_to_closed() {
      Jeweller jeweller = jeweller(BEFORE_THE_BENCH, AFTER_THE_BENCH, Integer.MAX_VALUE);

      assertThat(walkNew(jeweller)).isZero();

      assertThat(line.err()).isEmpty();
      assertThat(jeweller.typed()).contains("redo 2").endsWith("", "quit");
      assertThat(line.out())
          .contains("Entered: 2 links to redo at soldered")
          .contains("Remedy: ")
          .contains("Some go back: on to “Solder the links”.")
          .contains("In hand: 1, from redo.")
          .contains("Entered: 2 links soldered, redone.")
          .contains("no link, all 7 are good; no ring, all 8 are good")
          .contains("Length, planned 208.0 ± 2.6 mm, came out 221 mm.")
          .contains("Entered: job closed: start with the longer blank.")
          .contains("The job is closed. reopen opens it again, quit leaves.");
      assertThat(book()).contains("kind: job-closed");
      assertThat(line.run("jobs")).isZero();
      assertThat(line.out()).startsWith("ferry-bell-pull: Ferry bell pull; closed");
      assertThat(line.run("check")).isZero();
    }

    @Test
    void is_gone_on_with_after_it_was_cut_off_in_the_middle() {
      assertThat(walkNew(jeweller(BEFORE_THE_BENCH, List.of(), 70))).isZero();
      String cutOff = book();
      assertThat(cutOff).contains("stage: \"annealed\"").doesNotContain("job-closed");

      Jeweller again = jeweller(List.of(), AFTER_THE_BENCH, Integer.MAX_VALUE);
      assertThat(line.talking(again, "walk", "ferry-bell-pull", "--plain")).isZero();

      assertThat(book()).startsWith(cutOff).contains("kind: job-closed");
    }

    @Test
    void tells_an_entry_only_once_it_is_in_the_book() {
      Jeweller jeweller = jeweller(BEFORE_THE_BENCH, List.of(), 90);
      int[] told = {0};
      List<String> tooEarly = new ArrayList<>();
      Commandline.Typist looking =
          heard -> {
            told[0] += heard.split("Entered: ", -1).length - 1;
            long kept =
                book()
                    .lines()
                    .filter(
                        each ->
                            each.matches(
                                ".*kind:"
                                    + " (pieces|wire-cut|step-|redo-|test-|sample-|trial-|timer-|hot-work).*"))
                    .count();
            if (kept < told[0]) {
              tooEarly.add(heard);
            }
            return jeweller.apply(heard);
          };

      assertThat(walkNew(looking)).isZero();
      assertThat(told[0]).isGreaterThan(10);
      assertThat(tooEarly).isEmpty();
    }
  }

  @Nested
  class What_is_typed {
    private String demo(String... lines) {
      assertThat(line.typing(List.of(lines), "walk", "--plain")).isZero();
      return line.out();
    }

    @Test
    void is_answered_with_the_nearest_word_if_nobody_knows_it() {
      assertThat(demo("bech")).contains("“bech” is no word here. Did you mean bench?");
      assertThat(line.out()).contains("Nothing was entered.");
    }

    @Test
    void is_told_by_help() {
      String told = demo("help");
      for (String word : List.of("redo", "scrap", "undo", "away", "weigh", "close", "quit")) {
        assertThat(told).contains("\n" + word + ": ");
      }
    }

    @Test
    void is_asked_field_by_field_and_what_is_wrong_is_asked_again() {
      String told =
          demo("tests", "log", "41 mm", "1.2 mm", "", "fifteen", "15 mm", "=", "tests", "quit");
      assertThat(told)
          .contains("Blank (what you cut, 38 mm)?")
          .contains("“fifteen”")
          .contains("Entered: test piece: blank 41 mm");
    }

    @Test
    void stays_in_a_form_that_was_left() {
      demo("log blank 31 mm; length none", "esc", "quit");
      assertThat(demo("log", "?", "quit")).contains("Blank: 31 mm");
    }

    @Test
    void counts_nothing_at_a_step_that_was_not_heard_yet() {
      assertThat(demo("all")).contains("You are at the bench now. Type it again");
      assertThat(demo("bench", "all"))
          .contains("Not for now: all that wait.", "First: ", "An empty line: seen.")
          .doesNotContain("Entered: ");
    }

    @Test
    void can_be_undone_and_stays_in_the_book_struck() throws IOException {
      String told = demo("log blank 36 mm; make the next longer", "undo", "book 2", "quit");
      assertThat(told).contains("Undone: “test piece", "struck entry 3");
    }

    @Test
    void is_undone_and_brought_back_at_its_own_place_and_never_the_plan() throws IOException {
      String told = demo("note too heavy", "undo", "undo", "undo note", "restore note", "undo pan");
      assertThat(told)
          .contains("Nothing to undo here. Last entered elsewhere, and undone there (book): “note")
          .contains("Undone: “note: too heavy” (“restore” brings it back).")
          .contains("Brought back: “note: too heavy”.")
          .contains("After undo write nothing, or where it was entered")
          .doesNotContain("Undone: “plan");
    }

    @Test
    void is_kept_as_a_note_or_as_wire_that_came() {
      String told = demo("note the clasp is too heavy", "wire came 300 mm", "wire", "quit");
      assertThat(told).contains("Entered: note: the clasp is too heavy.");
    }

    @Test
    void makes_a_timer_that_goes_on_while_nobody_is_there() {
      demo("timer kettle 8 min", "quit");
      line.wait(Duration.ofMinutes(9));
      String told = demo("timers", "quiet", "timers");
      assertThat(told)
          .contains(
              "Timer: kettle is due.",
              "Kettle: due. “quiet” quiets it.",
              "kettle: quiet.",
              "No timer runs.");
    }

    @Test
    void says_that_the_torch_is_lit_and_asks_before_she_leaves_whether_every_flame_is_out() {
      List<String> answers = new ArrayList<>(List.of("", "3", "lit", "3", "quit", "", "shut"));
      boolean[] open = {false};
      int exit =
          line.talking(
              heard -> {
                open[0] |= heard.contains("An empty line: torch lit");
                return answers.isEmpty()
                    ? Optional.empty()
                    : Optional.of(open[0] ? answers.remove(0) : "");
              },
              "walk",
              "--plain");
      assertThat(exit).isZero();
      assertThat(line.out())
          .contains("Entered: hot work: lit.", "every flame out, gas shut?", "Fire watch: ")
          .contains("An empty line does nothing here.")
          .contains("Entered: hot work: every flame out, gas shut.");
    }

    @Test
    void says_of_a_lit_flame_on_every_page_and_last_of_all_when_its_lines_end() {
      List<String> answers =
          new ArrayList<>(
              List.of("places", "timers", "wire", "lesson", "places", "brief", "repeat"));
      boolean[] asked = {false};
      boolean[] lit = {false};
      Map<String, String> pages = new LinkedHashMap<>();
      String[] typed = {""};
      line.talking(
          heard -> {
            asked[0] |= heard.contains("An empty line: torch lit");
            lit[0] |= heard.contains("Entered: hot work: lit.");
            if (lit[0]) {
              pages.put(pages.size() + " " + typed[0], heard);
            }
            typed[0] = lit[0] && !answers.isEmpty() ? answers.remove(0) : asked[0] ? "lit" : "";
            return lit[0] && answers.isEmpty() ? Optional.empty() : Optional.of(typed[0]);
          },
          "walk",
          "--plain");
      assertThat(pages).hasSize(7);
      pages.forEach(
          (word, page) ->
              assertThat(page)
                  .as(word)
                  .containsPattern(
                      word.endsWith("brief")
                          ? "Brief: one line"
                          : "A flame is lit since [^.]*\\. “shut” says: every flame out, gas"
                              + " shut"));
      assertThat(line.out())
          .containsPattern(
              "Left\\. [^\n]*\nLit at [0-9: A-Za-z]*: every flame out, gas shut\\?\n\\z");
    }

    @Test
    void is_told_in_ASCII_where_nothing_else_can_be_shown() {
      line = new Commandline(folder, false);
      assertThat(demo("bench", "bech", "tests")).matches("\\A[\\n -~]*\\z");
    }

    @Test
    void needs_no_cursor_and_no_colour() {
      assertThat(demo("bench", "tests", "help")).doesNotContain("\u001b", "\r", "\u0007");
    }
  }

  @Nested
  class A_beginning {
    @Test
    void asks_for_the_plan_where_there_is_none() {
      int exit =
          line.typing(
              List.of("copper", "1 mm", "soft", "round", "esc", "quit"),
              "walk",
              "--plain",
              "--new",
              "Gate");
      assertThat(exit).isZero();
      assertThat(line.out()).contains("The plan.", "Metal (one of ", "Thickness (such as 0.9 mm");
    }

    @Test
    void is_refused_on_a_plan_that_is_wrong_and_nothing_is_begun() {
      String plan = line.file("bad.yaml", PLAN.replace("0.8 mm", "-8 mm")).toString();
      assertThat(line.run("walk", "--plain", "--new", "Gate", "--plan", plan))
          .isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("bad.yaml:4:7: ");
      assertThat(line.home().resolve("jobs")).doesNotExist();
    }

    @Test
    void names_the_nearest_job_if_there_is_none_of_that_name() {
      walkNew(heard -> Optional.empty());
      assertThat(line.run("walk", "ferry-bell-pul", "--plain")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("Did you mean ferry-bell-pull?");
    }

    @Test
    void takes_the_path_of_a_book_too() {
      walkNew(heard -> Optional.empty());
      String path = line.home().resolve("jobs/ferry-bell-pull.yaml").toString();
      assertThat(line.typing(List.of("places"), "walk", path, "--plain")).isZero();
      assertThat(line.out()).contains("Job: Ferry bell pull.");
    }

    @Test
    void is_wrong_use_with_two_jobs_or_a_plan_without_a_new_one() {
      assertThat(line.run("walk", "a", "--new", "b")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.run("walk", "--plan", "b.yaml")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.run("walk", "--new", "b", "--routine", "scrol-and-ring"))
          .isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("Did you mean scroll-and-ring?");
    }
  }
}
