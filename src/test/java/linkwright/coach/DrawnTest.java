package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import linkwright.coach.kernel.drawn.LaidOut;
import linkwright.files.BenchFile;
import linkwright.files.Home;
import linkwright.plain.PlainLines;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.TradeWords;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A step drawn by one key, and its tools held against the bench. */
class DrawnTest {
  @TempDir Path folder;

  private static Bencher toSolder() {
    Bencher bench = Bencher.withTheDemo().press("enter");
    bench.goTo("cut-blanks").type("3").press("space");
    bench.goTo("anneal-blanks").together();
    bench.goTo("form-links").type("3").press("space");
    return bench.goTo("solder-links");
  }

  private static String shown(Bencher bench) {
    return Shown.draw(bench.model(), Glyphs.FULL).text();
  }

  private static String said(Bencher bench) {
    return String.join(
        "\n",
        new PlainLines(act -> "type " + act.id())
            .of(Places.of(bench.model()).content(bench.model())));
  }

  @Test
  void one_key_shows_a_step_drawn_and_the_next_and_then_its_texts_again() {
    Bencher bench = toSolder();
    String texts = shown(bench);
    bench.press("p");
    assertThat(shown(bench)).contains("The pallion on the joint", "too large", "⣿");
    bench.press("p");
    assertThat(shown(bench)).contains("The soldered joint", "gapped", "flooded", "slumped");
    bench.press("p");
    assertThat(shown(bench)).isEqualTo(texts);
  }

  @Test
  void the_common_key_counts_while_a_drawing_is_looked_at_and_it_stays() {
    Bencher bench = toSolder().press("space");
    bench.press("p", "space");
    assertThat(shown(bench)).contains("2 of 9 links soldered", "The pallion on the joint");
  }

  @Test
  void a_forming_step_is_drawn_bend_by_bend_with_each_bend_in_words() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("form-links").press("p");
    assertThat(shown(bench)).contains("Bend by bend", "Mark the blank at", "Bend 1: from each end");
    assertThat(said(bench)).contains("Mark the blank at", "Bend 2: from each end");
  }

  @Test
  void test_pieces_are_drawn_bend_by_bend_too() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("form-test").press("t", "p");
    assertThat(shown(bench)).contains("Bend by bend", "Bend 1:");
    bench.press("p");
    assertThat(shown(bench)).contains("next blank");
  }

  @Test
  void who_sees_no_drawing_hears_what_is_on_it() {
    assertThat(said(toSolder()))
        .contains("The soldered joint, seen from the side.", "Gapped: Solder ran onto one end")
        .contains("Right: A bright line all the way through");
  }

  @Test
  void in_ascii_it_is_drawn_with_signs() {
    Bencher bench = toSolder().press("p");
    assertThat(Shown.draw(bench.model(), Glyphs.ASCII).text())
        .contains("##")
        .matches(text -> text.chars().allMatch(c -> c < 0x7F));
  }

  @Test
  void the_whole_bench_is_laid_out_at_the_first_step_and_each_step_lays_out_its_own() {
    Bencher bench = Bencher.withTheDemo().press("enter");
    assertThat(said(bench.goTo("lay-out")))
        .contains("Lay out: for all of it: ")
        .contains("torch", "pickle pot", "hard solder", "mallet");
    assertThat(said(bench.goTo("check-links"))).contains("Tools: loupe, two flat pliers.");
  }

  private LaidOut with(String tools) throws Exception {
    Files.write(folder.resolve("bench.yaml"), tools.getBytes(StandardCharsets.UTF_8));
    BenchFile file = BenchFile.load(new Home(folder));
    assertThat(file.problems()).isEmpty();
    return new LaidOut(Bencher.LIBRARY.reference(), file.bench(), TradeWords.BRITISH);
  }

  @Test
  void what_her_bench_has_not_is_told_by_any_name_of_it() throws Exception {
    Routine routine = Bencher.LIBRARY.routines().get("scroll-and-ring");
    Step check = routine.step(new StepId("check-links")).orElseThrow();
    LaidOut none = with("format: 1\nbench: mine\n");
    assertThat(none.saysLacking(none.at(check))).isEmpty();
    LaidOut some = with("format: 1\ntools: [Flat pliers, rawhide mallet]\n");
    assertThat(some.saysLacking(some.at(check))).isEqualTo("Not on your bench: loupe.");
    assertThat(some.lackedBy(routine)).contains("torch", "pickle pot").doesNotContain("mallet");
    LaidOut told =
        with(
            """
            format: 1
            tools: [loupe]
            flame: {fuel: propane}
            pickle: {kind: citric}
            solders:
            - {solder: mine, grade: easy}
            """);
    assertThat(told.lackedBy(routine))
        .contains("hard solder", "medium solder")
        .doesNotContain("easy solder", "pickle pot", " torch", "loupe");
  }
}
