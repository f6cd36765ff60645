package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.fit.Proposal;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.standing.TestPieces;
import org.junit.jupiter.api.Test;

/** The next ring goes where the verdict of the last one sends it. */
class RingVerdictTest {
  private final Bencher bench =
      Bencher.with(
              new Fact.JobOpened("Rope", "rope"),
              new Fact.PlanSet(
                  Map.of(
                      WishKeys.METAL, "copper",
                      WishKeys.WIRE, "0.8 mm",
                      WishKeys.LINK_PATTERN, "round",
                      WishKeys.LINK_FORMERS, "ring=3 mm",
                      WishKeys.FINISHED, "200 mm")))
          .press("esc", "t");

  private void log(String blank, String length, String width) {
    bench.press("n").put("blank", blank).put("length", length).put("width", width);
    for (int i = 0; i < 3 && bench.model().held().form().isPresent(); i++) {
      bench.press("ctrl-k");
    }
  }

  private Proposal next() {
    return TestPieces.of(bench.job().standing(), bench.job().state(), "")
        .orElseThrow()
        .next()
        .orThrow();
  }

  @Test
  void one_that_came_out_small_is_followed_by_a_larger_former_and_a_longer_blank() {
    log("12.1 mm", "4.6 mm", "4.6 mm");
    log("12 mm", "4 mm", "4 mm");
    assertThat(bench.entered(Fact.TestPieceTried.class).get(1).verdicts())
        .containsExactly("longer", "wider");
    assertThat(next().formersMm().get("ring")).isGreaterThan(3.05);
    assertThat(next().blankMm()).isGreaterThanOrEqualTo(12);
  }

  @Test
  void one_that_came_out_large_is_followed_by_a_smaller_former() {
    log("12.1 mm", "5.2 mm", "5.2 mm");
    assertThat(bench.entered(Fact.TestPieceTried.class).get(0).verdicts())
        .containsExactly("shorter", "narrower");
    assertThat(next().formersMm().get("ring")).isLessThan(2.95);
  }

  @Test
  void one_that_is_right_keeps_its_former() {
    log("12.1 mm", "4.6 mm", "4.6 mm");
    assertThat(next().formersMm()).containsEntry("ring", 3.0);
  }
}
