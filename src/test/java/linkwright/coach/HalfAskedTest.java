package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** What was asked as a wait fell due is not entered, and that is told. */
class HalfAskedTest {
  @Test
  void pieces_to_redo_without_a_reason_are_told_as_not_entered() {
    Bencher bench = Bencher.withTheDemo().press("enter").toSolder(4);
    bench.press("space", "space", "space").goTo("pickle-links").press("space");
    bench.goTo("solder-links").press("r");
    assertThat(((BenchHeld) bench.model().held()).ask()).isInstanceOf(BenchAsk.Why.class);
    bench.pass(Duration.ofMinutes(9)).press("space");
    assertThat(bench.entered(Fact.PiecesSentBack.class)).isEmpty();
    assertThat(bench.notice()).contains("Not entered, no reason was said: 1 to redo.");
  }
}
