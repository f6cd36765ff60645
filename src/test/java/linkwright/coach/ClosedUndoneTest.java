package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.Act;
import linkwright.coach.tray.ClosedWords;
import linkwright.coach.tray.TrayWords;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plain.PlainLines;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.again.MadeAgain;
import org.junit.jupiter.api.Test;

/** A job that is closed with its work not done: asked once, and no planned figure told as made. */
class ClosedUndoneTest {
  private static Bencher closed() {
    return Bencher.withTheDemo().press("i", "c", "ctrl-k", "ctrl-k");
  }

  private static TaughtJob taught(Bencher bench) {
    JobState state = bench.state();
    return TaughtJob.of(
        "gate",
        bench.entries(),
        state,
        Bencher.SHELF.reference(),
        Bencher.SHELF.patterns(),
        Bencher.SHELF.routine(state.course().routine()));
  }

  private static String shown(Bencher bench) {
    return String.join(" ", new PlainLines(Act::words).of(Pages.of(bench.model()).body()));
  }

  @Test
  void it_asks_once_and_closes_at_the_second_yes() {
    Bencher bench = Bencher.withTheDemo().press("i", "c", "ctrl-k");
    assertThat(bench.entered(Fact.JobClosed.class)).isEmpty();
    assertThat(bench.form().fields().get(0).trouble().orElseThrow())
        .startsWith("0 of ")
        .endsWith(" are good: close it all the same?");
    assertThat(bench.notice()).as("said once").isEqualTo("Keep it once more if it is so.");
    bench.press("ctrl-k");
    assertThat(bench.state().course().closed()).isTrue();
  }

  @Test
  void wire_that_came_and_is_still_here_is_asked_about_until_it_is_weighed_in() {
    Bencher bench = Bencher.withTheDemo();
    bench.take(
        new Message.Kept(
            List.of(
                new Entry(
                    bench.entries().size() + 1,
                    bench.now(),
                    "bench",
                    new Fact.WireAdded(PieceKind.LINK, 0.9, 2000, "soft", "", "march")))));
    bench.press("i", "c", "ctrl-k");
    assertThat(bench.form().fields().get(0).trouble().orElseThrow())
        .contains("are good; ")
        .contains("of wire, ")
        .contains("is still here by the book, neither given back");
    bench.press("esc", "n").put("chain", "9 g").put("wire", "0 g").press("ctrl-k", "ctrl-k");
    bench.press("c", "ctrl-k");
    assertThat(bench.form().fields().get(0).trouble().orElseThrow()).doesNotContain("of wire");
  }

  @Test
  void nothing_of_it_is_weighed_priced_or_cut_any_more() {
    Bencher bench = closed();
    assertThat(Places.of(bench.model()).acts(bench.model()))
        .contains(Act.REOPEN, Act.MAKE_AGAIN)
        .doesNotContain(Act.WEIGH, Act.WEIGH_OUT, Act.PRICE, Act.HOURS);
    bench.press("n");
    assertThat(bench.model().held().form()).isEmpty();
    assertThat(bench.notice()).contains("This job is closed and its figures stay");
    assertThat(shown(bench.press("p"))).doesNotContain("still to cut");
  }

  @Test
  void the_tray_tells_what_was_entered_and_names_what_was_planned() {
    Bencher bench = closed();
    String told =
        ClosedWords.stands(
            TrayWords.standing("gate", bench.entries(), Bencher.SHELF)
                .at(bench.now(), ClockMoves.NONE),
            bench.model().settings());
    assertThat(told).containsPattern(": 0 of \\d+ links, .*planned [^,]+, [^,]+$");
    assertThat(shown(bench)).contains("No chain was weighed in");
  }

  @Test
  void it_teaches_no_loss_no_hours_and_no_blank_and_nothing_of_it_is_told_when_made_again() {
    Bencher bench = closed();
    TaughtJob taught = taught(bench);
    assertThat(taught.stages()).isEmpty();
    assertThat(taught.paces()).isEmpty();
    assertThat(taught.pieces()).isEmpty();
    MadeAgain again = MadeAgain.of(bench.state(), Bencher.SHELF, Map.of(), UnitStyle.METRIC);
    assertThat(again.earlier()).isEmpty();
    assertThat(again.carries()).noneMatch(said -> said.startsWith("A loss of"));
  }

  @Test
  void its_plan_tells_no_hours_that_nobody_worked() {
    Bencher bench = closed();
    assertThat(shown(bench.press("p"))).doesNotContain("about 0");
    assertThat(bench.job().standing().quote().orElseThrow().hoursAgain())
        .as("made again it takes what a chain takes, not the minutes spent here")
        .isGreaterThan(1);
  }

  @Test
  void a_step_that_was_looked_at_or_passed_in_seconds_teaches_no_time() {
    Bencher bench = Bencher.withTheDemo().press("enter").seeCautions();
    for (int i = 0; i < 4; i++) {
      bench.pass(Duration.ofSeconds(10)).press("n").seeCautions();
    }
    assertThat(bench.state().times().totalSeconds()).isPositive();
    assertThat(taught(bench).paces()).isEmpty();
    assertThat(bench.job().standing().jobHours().orElseThrow().toGo().learned()).isFalse();
    assertThat(Hands.of(List.of(taught(bench)), Set.of()).secondsEach()).isEmpty();
  }

  @Test
  void a_step_that_was_worked_at_and_counted_teaches_its_time() {
    Bencher bench = Bencher.withTheDemo().press("enter").seeCautions().goTo("cut-blanks");
    bench.pass(Duration.ofMinutes(20)).type("9").press("space");
    assertThat(taught(bench).paces()).isNotEmpty();
  }

  @Test
  void what_is_typed_behind_a_sentence_that_stood_there_is_one_of_its_own() {
    Bencher bench = Bencher.withTheDemo().press("i", "n").type("7.1 g").press("down");
    bench.type("190 mm").press("ctrl-k");
    assertThat(bench.entered(Fact.WeighedIn.class)).hasSize(1);
    bench.press("c").type("Warmer rings.").press("ctrl-k", "ctrl-k");
    assertThat(bench.state().course().nextTime()).contains(" mm. Warmer rings.").endsWith("rings.");
  }
}
