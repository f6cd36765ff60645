package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the press before led to comes up a little after it, and is read after that. */
class JustComeUpTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  /** It is drawn so many milliseconds after the press before, the next comes so many after that. */
  private void pressed(long drawn, long after) {
    Instant then = bench.model().steady().plusMillis(drawn);
    Instant at = then.plusMillis(after);
    Instant now = bench.model().now().plusMillis(drawn + after);
    bench.take(new Message.Ticked(now, at, Optional.of(then)));
    bench.take(new Message.KeyPressed(Key.of(Key.Kind.PAGE_DOWN), Optional.of(at)));
  }

  @ParameterizedTest
  @ValueSource(longs = {600, 680})
  void is_no_card_that_was_read_before_it_stood_so_long(long after) {
    bench.pressEvery(1000, 1, "page-down");
    pressed(50, after);
    assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(1);
  }

  @Test
  void is_a_card_that_stood_so_long() {
    bench.pressEvery(1000, 1, "page-down");
    pressed(50, 700);
    assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(longs = {690, 700, 710, 900})
  void is_no_step_that_a_steady_pedal_ends_as_the_torch_is_lit(long millis) {
    bench.goTo("anneal-wire").pass(Duration.ofSeconds(5));
    assertThat(BenchPlace.commonAct(bench.model(), bench.at())).isEqualTo(Act.LIT);
    bench.pressEvery(millis, 1, "page-down");
    assertThat(bench.model().hotWork().open()).isTrue();
    bench.pressEvery(millis, 1, "page-down");
    assertThat(bench.entered(Fact.StepDone.class)).isEmpty();
    bench.pressEvery(1100, 1, "page-down");
    assertThat(bench.entered(Fact.StepDone.class)).hasSize(1);
  }
}
