package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.keys.Act;
import linkwright.coach.plan.PlanContent;
import linkwright.plain.PlainLines;
import org.junit.jupiter.api.Test;

/** A closed job is told as one for which nothing is cut or done any more. */
class ClosedJobToldTest {
  private final Bencher open = Bencher.withTheDemo();
  private final Bencher closed =
      Bencher.withTheDemo().press("i", "c", "ctrl-k", "ctrl-k").press("esc");

  private static String shown(Bencher bench, String key) {
    return String.join(
        "\n", new PlainLines(Act::words).of(Pages.of(bench.press(key).model()).body()));
  }

  private static String plan(Bencher bench) {
    return String.join(
        "\n",
        new PlainLines(Act::words).of(PlanContent.comesTo(bench.job().standing(), bench.model())));
  }

  @Test
  void the_wire_is_not_cut_any_more() {
    assertThat(shown(open, "w")).contains("The wire will do", "Still to cut");
    assertThat(shown(closed, "w"))
        .contains("The job is closed: nothing more is cut for it.", "On hand")
        .doesNotContain("The wire will do", "Still to cut", "Short");
  }

  @Test
  void the_plan_foresees_nothing() {
    assertThat(plan(open)).contains("Will do", "Wire to buy", "Redone", "Cut the wire on hand so");
    assertThat(plan(closed))
        .doesNotContain("Will do", "Wire to buy", "Redone", "Cut the wire on hand so");
  }

  @Test
  void no_other_chain_is_offered() {
    assertThat(shown(open, "n")).contains("The key beside it plans the chain so");
    assertThat(shown(closed, "n"))
        .contains("The job is closed: its plan stays as it is.")
        .doesNotContain("The key beside it");
  }
}
