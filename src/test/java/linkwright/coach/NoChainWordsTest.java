package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.job.Fact;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;

/** What is asked and counted of a job that makes no chain, and of a chain of several sizes. */
class NoChainWordsTest {
  private static Field field(Bencher bench, String id) {
    return bench.model().held().form().orElseThrow().fields().stream()
        .filter(field -> field.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static boolean stands(Bencher bench) {
    Form form = bench.model().held().form().orElseThrow();
    return form.lines().contains(form.fields().indexOf(field(bench, WishKeys.LINK_REPEAT)));
  }

  @Test
  void a_clasp_is_weighed_in_as_pieces() {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", "clasp-box")).press("esc", "i", "n");
    assertThat(field(bench, "chain").label()).isEqualTo("pieces");
    assertThat(field(bench, "chain").hint() + field(bench, "length").hint())
        .doesNotContain("clasp", "inside end");
    bench.press("ctrl-k");
    assertThat(field(bench, "chain").trouble().orElseThrow()).doesNotContain("chain");
  }

  @Test
  void ten_joints_are_planned_as_ten() {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", "torch-practice"));
    assertThat(field(bench, PartPlan.PIECES).text()).isEqualTo("10");
    bench = Bencher.with(new Fact.JobOpened("A job", "torch-practice"), new Fact.PlanSet(Map.of()));
    assertThat(bench.job().standing().left().get(new PieceKind("joint")).wanted()).isEqualTo(10);
  }

  @Test
  void a_job_that_makes_no_chain_closes_with_no_hours_of_trials() {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", "torch-practice")).press("esc");
    bench.goTo("light-and-shut");
    bench.pass(Duration.ofMinutes(20));
    bench.goTo("cut-rings").press("space").press("esc", "i", "n");
    bench.type("2.1 g").press("ctrl-k").press("c").press("ctrl-k", "ctrl-k");
    assertThat(bench.job().state().accounts().figures())
        .containsKey("hours")
        .containsEntry("trial_hours", 0.0);
  }

  @Test
  void several_links_to_a_repeat_are_asked_for_at_once() {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", "figaro"));
    assertThat(stands(bench)).isTrue();
    assertThat(field(bench, WishKeys.LINK_REPEAT).hint()).startsWith("2 links by this routine");
    Bencher alike = Bencher.with(new Fact.JobOpened("A job", "belcher"));
    assertThat(stands(alike)).isFalse();
  }
}
