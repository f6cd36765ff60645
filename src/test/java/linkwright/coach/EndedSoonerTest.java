package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linkwright.coach.form.Offered;
import linkwright.job.Fact;
import linkwright.job.WaitEnd;
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
