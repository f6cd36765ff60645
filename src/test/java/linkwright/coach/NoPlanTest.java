package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.kernel.PlaceId;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** A chain can be worked at before its plan is kept: the bench says so. */
class NoPlanTest {
  private final Bencher bench =
      Bencher.with(new Fact.JobOpened("Anchor line", "scroll-and-ring")).press("esc", "b");

  @Test
  void the_bench_of_a_chain_without_a_plan_says_that_none_is_kept() {
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
    assertThat(Pages.of(bench.model()).still()).startsWith("No plan is kept");
  }

  @Test
  void where_one_is_kept_and_where_none_is_needed_nothing_is_said_of_it() {
    assertThat(Pages.of(Bencher.withTheDemo().press("b").model()).still()).startsWith("Still");
    Bencher part = Bencher.with(new Fact.JobOpened("Clasp", "hook-and-eye")).press("b");
    assertThat(Pages.of(part.model()).still()).isEmpty();
    bench.press("esc");
    assertThat(Pages.of(bench.model()).still()).isEmpty();
  }
}
