package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import linkwright.job.Fact;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** What is done again after a heat that is done again. */
class BenchHeatedAgainTest {
  @Test
  void what_is_heated_again_is_pickled_again_and_the_key_does_not_pass_it() {
    Bencher bench = Bencher.withTheDemo().press("enter");
    bench.goTo("anneal-wire").press("space", "space").seeCautions().press("space");
    bench.pass(Duration.ofMinutes(9)).press("space").pass(Duration.ofSeconds(5));
    assertThat(bench.state().course().stepsDone()).contains(new StepId("pickle-wire"));
    bench.seeCautions().goTo("anneal-wire").press("space").seeCautions();
    assertThat(bench.at().step().id().word()).isEqualTo("pickle-wire");
    bench.pass(Duration.ofSeconds(5)).press("space");
    assertThat(bench.entered(Fact.TimerStarted.class)).hasSize(2);
    assertThat(bench.at().step().id().word()).isEqualTo("pickle-wire");
  }
}
