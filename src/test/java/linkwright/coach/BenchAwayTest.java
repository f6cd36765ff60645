package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;
import org.junit.jupiter.api.Test;

/** The next morning, and after stepping away: how the work stands, before the first step. */
class BenchAwayTest {
  private static Bencher atWork() {
    return Bencher.withTheDemo().goTo("cut-blanks").press("3", "space");
  }

  private static String shown(Bencher bench) {
    List<String> lines = new PlainLines(Act::words).of(Pages.of(bench.model()).body());
    return String.join("\n", lines);
  }

  @Test
  void the_next_morning_tells_what_was_last_and_begins_no_sitting_by_itself() {
    Bencher bench = atWork().press("w").pass(Duration.ofHours(16)).press("esc");
    int sittings = bench.entered(Fact.SittingStarted.class).size();
    bench.press("b");
    assertThat(shown(bench))
        .contains(
            "Last entered",
            "3 links",
            "Open: step",
            "Waiting: 3 links at step 14",
            "No flame is lit");
    assertThat(bench.entered(Fact.SittingStarted.class)).hasSize(sittings);
    bench.press("space");
    assertThat(bench.entered(Fact.SittingStarted.class)).hasSize(sittings + 1);
    assertThat(shown(bench)).doesNotContain("Last entered");
  }

  @Test
  void after_a_short_pause_the_work_goes_on_at_once() {
    Bencher bench = atWork().press("esc").pass(Duration.ofMinutes(90));
    int sittings = bench.entered(Fact.SittingStarted.class).size();
    bench.press("b");
    assertThat(bench.entered(Fact.SittingStarted.class)).hasSize(sittings + 1);
  }

  @Test
  void the_first_time_there_is_nothing_to_tell() {
    Bencher bench = Bencher.withTheDemo().pass(Duration.ofDays(3)).press("b");
    assertThat(bench.entered(Fact.SittingStarted.class)).hasSize(1);
  }
}
