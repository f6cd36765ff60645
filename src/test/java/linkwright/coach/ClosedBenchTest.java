package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.Fact;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A closed job is worked on again once it is opened again, and not before. */
class ClosedBenchTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  @BeforeEach
  void close() {
    bench.goTo("cut-blanks").type("8").press("space").goTo("anneal-blanks");
    bench.press("esc", "i", "c", "ctrl-k", "ctrl-k");
    assertThat(bench.state().course().closed()).isTrue();
  }

  private List<Fact> work() {
    return bench.entered(Fact.class).stream()
        .filter(fact -> !(fact instanceof Fact.SittingStarted))
        .toList();
  }

  @Test
  void whoever_takes_over_counts_nothing_in_it() {
    List<Fact> before = work();
    bench.press("b", "@").type("Cleo").press("ctrl-k");
    for (String key : List.of("space", "8", "space", "a", "w", "n", "p", "r", "t", "y")) {
      bench.press("b").press(key);
    }
    assertThat(work()).isEqualTo(before);
    bench.press("esc").press("b").press("space");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
    assertThat(bench.notice()).startsWith("This job is closed. Open it again");
    assertThat(BenchAnswers.away(bench.model())).isTrue();
  }

  @Test
  void no_test_piece_and_no_trial_is_entered_and_what_is_typed_stays() {
    List<Fact> before = work();
    for (String place : List.of("e", "t", "l", "w", "m", "p", "n", "o", "s")) {
      bench.press("esc", "esc", "enter").press(place).press("n").press("ctrl-k", "ctrl-k");
    }
    assertThat(work()).isEqualTo(before);
  }

  @Test
  void opened_again_it_is_worked_on() {
    bench.press("esc", "i", "g", "esc", "b");
    assertThat(BenchAnswers.away(bench.model())).isFalse();
  }
}
