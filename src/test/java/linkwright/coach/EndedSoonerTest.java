package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

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
  void a_fire_watch_is_done_sooner_by_nothing() {
    assertThat(reasons(ending("bench-watch"))).containsExactly("taken over by a colleague");
  }
}
