package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.Page;
import linkwright.coach.keys.Act;
import linkwright.coach.plan.PlanContent;
import linkwright.exchange.PlanYaml;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plain.PlainLines;
import linkwright.shell.Demo;
import linkwright.standing.nearest.ChainChoices;
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

  private static Map<String, Object> yaml(Bencher bench) {
    JobState state = bench.state();
    return PlanYaml.of(
        "Demo",
        bench.job().standing(),
        ChainChoices.of(state.course().wish(), state, Bencher.SHELF),
        Bencher.SHELF.reference());
  }

  @Test
  void the_bench_says_so_to_every_key_and_enters_nothing() {
    int entered = closed.entries().size();
    assertThat(shown(closed, "b")).contains("This job is closed").doesNotContain("Away");
    assertThat(Pages.of(closed.model()).body().title()).isEqualTo("closed");
    for (String key : List.of("space", "d", "r", "n", "u", "@", "x", "page-down", "a", "z")) {
      closed.press(key);
      assertThat(closed.notice()).as(key).contains("This job is closed. Open it again");
      assertThat(closed.model().held().form()).as(key).isEmpty();
    }
    assertThat(closed.entries()).hasSize(entered);
    assertThat(Pages.of(closed.model()).open())
        .extracting(Page.Open::says)
        .contains("closed: how it opens")
        .doesNotContain("back at the bench");
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
        .doesNotContain("The key beside it", "links and", "Another");
    assertThat(Pages.of(closed.model()).open())
        .extracting(Page.Open::act)
        .doesNotContain(Optional.of(Act.ONE_MORE), Optional.of(Act.FIT_RING));
  }

  /** Its plan is read, not typed: no key keeps it, and a letter is no text. */
  @Test
  void the_plan_is_not_to_be_kept() {
    assertThat(Pages.of(open.press("p").model()).open())
        .extracting(Page.Open::act)
        .contains(Optional.of(Act.KEEP));
    assertThat(shown(closed, "p"))
        .contains("The job is closed: its plan stays as it is.", "Thickness: 1.0 mm", "Links: 9");
    assertThat(Pages.of(closed.model()).open())
        .extracting(Page.Open::act)
        .doesNotContain(Optional.of(Act.KEEP));
    int entries = closed.entries().size();
    closed.type("9").press("ctrl-k", "page-down", "v");
    assertThat(closed.entries()).hasSize(entries);
    assertThat(closed.model().held().form()).isEmpty();
  }

  @Test
  void it_weighs_what_the_scale_said() {
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    OptionalDouble none = OptionalDouble.empty();
    facts.add(new Fact.WeighedIn(OptionalDouble.of(9.23), none, none, none, none, none, none));
    facts.add(new Fact.JobClosed(""));
    Bencher weighed = Bencher.with(facts.toArray(Fact[]::new));
    assertThat(plan(weighed)).contains("Chain weighs: 9.23 g, measured");
    assertThat(yaml(weighed))
        .containsEntry("closed", true)
        .containsEntry("mass_chain_g", 9.23)
        .containsEntry("mass_chain_from", "measured")
        .containsEntry("wire_to_order_g", 0.0)
        .containsEntry("nearest", List.of());
  }

  private static Bencher measured(boolean closed) {
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble rule = OptionalDouble.of(183.7);
    facts.add(new Fact.WeighedIn(OptionalDouble.of(9.23), rule, none, none, none, none, none));
    if (closed) {
      facts.add(new Fact.JobClosed(""));
    }
    return Bencher.with(facts.toArray(Fact[]::new));
  }

  @Test
  void it_is_as_long_as_the_rule_said() {
    Bencher made = measured(true);
    assertThat(plan(made)).contains("Length: 183.7 mm, measured").contains("as reckoned");
    assertThat(plan(open)).contains("What it weighs:").doesNotContain("as reckoned");
    assertThat(shown(made, "n")).contains("Measured: 183.7 mm").doesNotContain("±");
    assertThat(shown(measured(true), "esc")).contains("links, 183.7 mm");
    assertThat(yaml(made))
        .containsEntry("length_mm", 183.7)
        .containsEntry("length_from", "measured")
        .doesNotContainKey("length_plus_minus_mm");
  }

  @Test
  void neither_a_trial_nor_another_count_is_told_of_it() {
    List<String> offered = List.of("One fewer", "One more", "After a trial", "Ring for that");
    assertThat(plan(open)).contains("One fewer", "One more", "After a trial");
    assertThat(plan(measured(true))).doesNotContain(offered);
    List<String> keys = List.of("one_fewer_mm", "one_more_mm", "exact_ring_inside_mm");
    assertThat(yaml(open))
        .containsKeys("one_fewer_mm", "one_more_mm")
        .doesNotContainKey("length_from");
    assertThat(yaml(measured(true))).doesNotContainKeys(keys.toArray(String[]::new));
    assertThat(yaml(measured(false))).containsKeys("one_fewer_mm", "one_more_mm");
  }
}
