package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Offered;
import linkwright.job.Fact;
import linkwright.job.TimerRun;
import linkwright.job.WaitEnd;
import linkwright.routine.Stage;
import linkwright.view.Scenes;
import org.junit.jupiter.api.Test;

/** A wait that is ended before its time: its likely reasons are offered, any other may be typed. */
class EndedSoonerTest {
  private static Bencher ending(String scene) {
    return Scenes.of(scene, 80, 24).press("esc", "m", "enter");
  }

  private static List<String> reasons(Bencher bench) {
    return bench.form().fields().get(0).choices().stream().map(Offered::id).toList();
  }

  /** Four of six links in the pickle, the flame lit. */
  private static Bencher pickling() {
    Bencher bench = Bencher.withTheDemo().press("enter").toSolder(6);
    return bench.type("4").press("space").goTo("pickle-links").press("space");
  }

  private static Optional<TimerRun> running(Bencher bench) {
    return bench.model().timers().next();
  }

  private static long left(Bencher bench) {
    return running(bench).orElseThrow().left(bench.model().steady()).toSeconds();
  }

  @Test
  void begun_by_mistake_it_is_ended_and_they_wait_again() {
    Bencher bench = pickling();
    bench.press("esc", "m", "enter").type("begun by mistake").press("ctrl-k", "esc", "b");
    assertThat(running(bench)).isEmpty();
    bench.press("a");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).as("not through").isZero();
    assertThat(left(bench)).as("they go in first").isEqualTo(480);
  }

  @Test
  void a_look_that_is_struck_lets_it_run_on_from_when_they_went_in() {
    Bencher bench = pickling();
    bench.pass(Duration.ofMinutes(3)).press("d");
    assertThat(running(bench)).isEmpty();
    bench.pass(Duration.ofMinutes(1)).press("esc", "k", "x").type("not clean").press("ctrl-k");
    assertThat(bench.entered(Fact.Struck.class)).hasSize(1);
    assertThat(left(bench)).isBetween(200L, 240L);
    bench.press("esc", "b", "a");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).as("they stay in").isZero();
  }

  @Test
  void taken_over_by_another_it_is_over() {
    Bencher bench = pickling();
    bench.press("esc", "m", "enter").type("looked at by Ann").press("ctrl-k");
    assertThat(running(bench)).as("asked which of the two").isPresent();
    bench.type("the wait is over").press("ctrl-k", "esc", "b", "a");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
  }

  @Test
  void what_is_done_sooner_is_offered_and_kept() {
    Bencher bench = ending("bench-batch");
    assertThat(reasons(bench)).contains("begun by mistake", "taken over by a colleague");
    bench.press("right").press("enter").type("over").press("ctrl-k");
    List<Fact.TimerAnswered> all = bench.entered(Fact.TimerAnswered.class);
    Fact.TimerAnswered ended = all.get(all.size() - 1);
    assertThat(ended.how()).isEqualTo(WaitEnd.REASON);
    assertThat(ended.reason()).isEqualTo("done sooner: bright all over");
  }

  @Test
  void what_follows_a_reason_stands_there_and_the_title_holds_no_countdown() {
    Bencher bench = ending("bench-batch");
    String title = bench.form().title();
    bench.press("right");
    assertThat(bench.form().text("then")).isEqualTo("the wait is over");
    bench.press("right", "right", "right").pass(Duration.ofMinutes(2));
    assertThat(bench.form().text("why")).isEqualTo("begun by mistake");
    assertThat(bench.form().text("then")).isEqualTo("it waits again");
    assertThat(bench.form().title()).isEqualTo(title).contains("runs till ");
    bench.press("enter", "left");
    assertThat(bench.form().text("then")).isEqualTo("the wait is over");
    bench.press("ctrl-k");
    List<Fact.TimerAnswered> all = bench.entered(Fact.TimerAnswered.class);
    assertThat(all.get(all.size() - 1).reason()).isEqualTo("begun by mistake");
  }

  @Test
  void a_fire_watch_is_done_sooner_by_nothing() {
    assertThat(reasons(ending("bench-watch"))).containsExactly("taken over by a colleague");
  }
}
