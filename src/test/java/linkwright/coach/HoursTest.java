package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.plain.PlainLines;
import org.junit.jupiter.api.Test;

/** Hours are put right by an entry, with its reason; undo takes it back like any other. */
class HoursTest {
  @Test
  void hours_are_put_right_and_taken_back() {
    Bencher bench = Bencher.withTheDemo().goTo("cut-blanks").pass(Duration.ofMinutes(20));
    double was = bench.press("space").state().times().totalSeconds();
    bench.press("esc", "i", "h").put("time", "3 h").press("ctrl-k");
    assertThat(bench.entered(BenchFact.HoursCorrected.class)).as("no reason").isEmpty();
    bench.put("why", "forgot to step away").press("ctrl-k");
    assertThat(bench.state().times().totalSeconds()).isCloseTo(3 * 3600, within(1.0));
    List<String> shown = new PlainLines(Act::words).of(Pages.of(bench.model()).body());
    assertThat(String.join(" ", shown)).contains("Hours put right", "forgot to step away");
    bench.press("u");
    assertThat(bench.state().times().totalSeconds()).isCloseTo(was, within(120.0));
  }
}
