package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.coach.content.Acts;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.standing.nearest.ChainChoice;
import linkwright.standing.nearest.ChainChoices;
import org.junit.jupiter.api.Test;

/** What is offered near the wish is really planned by its key. */
class NearestPlaceTest {
  private static Plan plan(Bencher bench) {
    return bench.job().standing().counted().plan().orElseThrow();
  }

  private static Acts choices(Bencher bench) {
    return Pages.of(bench.model()).body().parts().stream()
        .filter(Acts.class::isInstance)
        .map(Acts.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void each_key_sets_the_plan_to_the_length_that_stands_beside_it() {
    Bencher asked = Bencher.withTheDemo().press("n");
    double doubt = plan(asked).plusMinusMm();
    assertThat(choices(asked).choices()).hasSizeGreaterThanOrEqualTo(5);
    for (Acts.Choice choice : choices(asked).choices()) {
      Bencher bench = Bencher.withTheDemo().press("n", KeyMap.USUAL.firstOf(choice.act()));
      assertThat(bench.entered(Fact.PlanSet.class)).as(choice.stands()).hasSize(2);
      assertThat(choice.stands())
          .startsWith(UnitStyle.METRIC.roundedBy(plan(bench).lengthMm(), doubt))
          .contains(plan(bench).links() + " links");
      assertThat(bench.notice()).contains("Planned with", plan(bench).links() + " links");
    }
  }

  @Test
  void fitted_rings_make_the_chain_as_long_as_wished() {
    Bencher bench = Bencher.withTheDemo().press("n", "r");
    assertThat(plan(bench).offMm()).isBetween(-0.5, 0.5);
    assertThat(choices(bench).choices()).isNotEmpty();
  }

  @Test
  void what_is_typed_into_the_plan_and_not_kept_stays_typed() {
    Bencher bench = Bencher.withTheDemo().press("p", "end").type("1").press("esc", "n", "m");
    assertThat(bench.job().drafts().get("plan")).containsKey(WishKeys.FINISHED);
    assertThat(bench.job().drafts().get("plan").get(WishKeys.FINISHED))
        .isEqualTo(bench.job().state().course().wish().get(WishKeys.FINISHED));
  }

  /** 44 of 150 plans by chance named a ring of 1.42 mm for two wires of 1.01 mm. */
  @Test
  void a_ring_that_two_wires_do_not_pass_is_told_and_the_least_that_they_pass_is_offered() {
    Bencher demo = Bencher.withTheDemo();
    Map<String, String> wish = new LinkedHashMap<>(demo.job().state().course().wish());
    wish.remove(WishKeys.RING_OVAL);
    wish.put(WishKeys.RING_INSIDE, "2.3 mm");
    for (int tenths = 1500; tenths < 2000; tenths += 7) {
      wish.put(WishKeys.FINISHED, tenths / 10.0 + " mm");
      Bencher bench =
          Bencher.with(new Fact.JobOpened("A", "scroll-and-ring"), new Fact.PlanSet(wish));
      Plan plan = plan(bench);
      if (plan.tightRingInsideMm().isPresent()) {
        assertThat(plan.exactRingInsideMm()).isEmpty();
        assertThat(plan.tightRingInsideMm().getAsDouble()).isLessThan(plan.leastRingInsideMm());
        ChainChoice ring =
            ChainChoices.of(wish, bench.job().state(), bench.model().handbook()).stream()
                .filter(choice -> choice.way() == ChainChoice.Way.FIT_RING)
                .findFirst()
                .orElseThrow();
        assertThat(ring.sizeMm().getAsDouble()).isGreaterThanOrEqualTo(plan.leastRingInsideMm());
        assertThat(new PlainLines(Act::words).of(Pages.of(bench.press("n").model()).body()))
            .anyMatch(line -> line.contains("would make it exact, but"));
        return;
      }
    }
    throw new AssertionError("no wish has so tight a ring");
  }
}
