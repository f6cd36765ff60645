package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import org.junit.jupiter.api.Test;

/** What could not be written, while a flame is lit. */
class FailingTest {
  @Test
  void leaving_what_could_not_be_written_asks_for_the_flames_first() {
    Bencher bench = Bencher.withTheDemo().goTo("anneal-wire").press("space");
    assertThat(bench.model().hotWork().open()).isTrue();
    bench.diskIsFull(true).press("space", "q");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
    assertThat(bench.performed(Effect.Leave.class)).isEmpty();
    assertThat(Pages.of(bench.model()).open())
        .extracting(open -> open.act().orElseThrow())
        .containsExactly(Act.FLAMES_OUT, Act.STILL_LIT, Act.STAY, Act.HELP);
    assertThat(KeyMap.USUAL.keysOf(Act.FLAMES_OUT))
        .as("those it names, and the pedal's")
        .containsExactly("space", "page-down");
    bench.press("enter");
    assertThat(bench.model().hotWork().open()).isTrue();
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
    bench.press("n");
    assertThat(bench.performed(Effect.Leave.class)).hasSize(1);
  }
}
