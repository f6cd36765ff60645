package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.coach.kernel.PlaceId;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import org.junit.jupiter.api.Test;

class ReachPlaceTest {
  private static Apprentice told() {
    return Apprentice.withAJob(Map.of())
        .press("h", "down")
        .type("12 g")
        .press("down", "down")
        .type("6")
        .press("ctrl-k");
  }

  @Test
  void what_there_is_is_said_and_the_longest_is_told_with_what_binds() {
    Apprentice bench = told();
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.REACH);
    assertThat(bench.shown()).contains("12 g", "longest chain", "bind");
  }

  /** With 6 h there, "one link more takes 6.0 h" would say that it can be had. */
  @Test
  void one_link_more_never_reads_as_what_there_is() {
    for (int tenths = 30; tenths <= 90; tenths++) {
      String hours = tenths / 10 + "." + tenths % 10;
      String shown =
          Apprentice.withAJob(Map.of())
              .press("h", "down", "down", "down")
              .type(hours)
              .press("ctrl-k")
              .shown()
              .replaceAll("\\s+", " ");
      assertThat(shown).doesNotContain("more takes " + hours + " h");
    }
  }

  @Test
  void the_longest_is_planned_by_one_key_and_is_what_was_told() {
    Apprentice bench = told().press("k");
    Plan plan = bench.model().job().orElseThrow().standing().counted().plan().orElseThrow();
    assertThat(bench.shown()).contains(plan.links() + " links");
    assertThat(bench.model().job().orElseThrow().state().course().wish())
        .containsKey(WishKeys.FINISHED);
    assertThat(plan.offMm()).isBetween(-0.01, 0.01);
  }

  @Test
  void what_cannot_be_read_is_told_beside_its_field_and_stays() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("h").type("long").press("ctrl-k");
    assertThat(Troubles.in(bench.model().held().form().orElseThrow())).isTrue();
    assertThat(bench.model().held().form().orElseThrow().text("wire")).isEqualTo("long");
  }
}
