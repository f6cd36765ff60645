package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** While the wait of a step runs, the common key goes past no other that has something to do. */
class OnPastWaitTest {
  private final Bencher bench = Bencher.with(new Fact.JobOpened("Harbour", "oval-and-long"));

  private void through(String step) {
    bench.goTo(step);
    for (int i = 0; i < 9 && bench.at().waiting() + bench.at().redo() > 0; i++) {
      bench.press("space");
    }
  }

  /** A short chain that is whole, its rings ovalled. */
  private void joined() {
    bench.goTo("wind-links").type("3").press("space");
    through("solder-links");
    bench.goTo("pickle-links").together();
    through("check-links");
    through("true-links");
    bench.goTo("cut-rings").type("4").press("space");
    through("join");
    bench.goTo("pickle-chain").together();
    through("check-rings");
    through("oval-rings");
  }

  private void wireInThePickle() {
    joined();
    bench.goTo("anneal-wire").press("w");
    assertThat(bench.model().timers().next()).isPresent();
  }

  @Test
  void from_the_last_ring_it_goes_to_the_clasp_before_the_chain_is_finished() {
    wireInThePickle();
    bench.goTo("oval-rings").press("space");
    assertThat(bench.at().step().id().word()).isEqualTo("fit-clasp");
    assertThat(bench.notice()).startsWith("Pickle the wire: till ").contains("On to “Fit the ");
    bench.seeCautions();
    bench.press("n");
    assertThat(bench.at().step().id().word()).as("asked of the mark").isEqualTo("mark");
  }

  @Test
  void from_the_wait_itself_it_goes_there_too() {
    wireInThePickle();
    bench.press("space");
    assertThat(bench.at().step().id().word()).isEqualTo("fit-clasp");
  }

  @Test
  void what_was_passed_and_entered_so_is_not_gone_to_again() {
    joined();
    bench.goTo("look-over").goTo("anneal-wire").press("space", "w");
    assertThat(bench.entered(BenchFact.StepSkipped.class))
        .anyMatch(skipped -> skipped.step().word().equals("fit-clasp"));
    bench.press("space");
    assertThat(bench.at().step().id().word()).isEqualTo("finish");
  }

  @Test
  void where_all_are_through_and_a_wait_runs_the_key_says_till_when() {
    joined();
    bench.goTo("pickle-chain").press("w");
    assertThat(Pages.of(bench.model()).open().get(0).act()).contains(Act.MEANWHILE);
    bench.press("space");
    assertThat(bench.notice()).startsWith("Pickle the chain: till ");
  }

  private String foot() {
    return Pages.of(bench.model()).open().get(0).says();
  }

  @Test
  void with_nothing_made_the_foot_says_that_the_key_leads_back_to_the_wait() {
    bench.goTo("anneal-wire").press("space", "w");
    assertThat(bench.model().timers().next()).isPresent();
    bench.goTo("solder-links");
    assertThat(foot()).isEqualTo("back to the wait that runs");
    bench.press("space");
    assertThat(bench.at().step().id().word()).isEqualTo("anneal-wire");
  }

  @Test
  void where_some_are_to_be_redone_the_foot_says_that_too() {
    bench.goTo("wind-links").type("3").press("space");
    through("solder-links");
    bench.goTo("pickle-links").together().goTo("check-links").press("r", "1", "space", "space");
    assertThat(foot()).isEqualTo("ask when 1 is redone");
    bench.press("space", "2");
    assertThat(bench.at().step().id().word()).isEqualTo("solder-links");
    bench.goTo("check-links");
    assertThat(foot()).isEqualTo("back to those to redo");
    bench.press("space");
    assertThat(bench.at().step().id().word()).isEqualTo("solder-links");
  }

  @Test
  void before_the_torch_is_lit_the_timers_key_says_what_comes_first() {
    bench.goTo("anneal-wire");
    assertThat(bench.at().timed()).isNotEmpty();
    bench.press("u", "w");
    assertThat(bench.notice())
        .isEqualTo("Not for now: start its timer. It begins with the heat: space comes first.");
    bench.goTo("make-former").press("w");
    assertThat(bench.notice()).endsWith("This step has no wait.");
  }

  @Test
  void at_a_card_while_another_wait_is_over_it_says_where_the_key_goes() {
    Bencher demo = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
    demo.press("n").pass(Duration.ofMinutes(9));
    assertThat(demo.caution()).isPresent();
    demo.press("n");
    assertThat(demo.notice()).startsWith("First the wait that is over: space goes there.");
    demo.press("m");
    assertThat(demo.notice()).endsWith("The wait that is over comes first: space goes there.");
    demo.press("space");
    assertThat(demo.at().step().id().word()).isEqualTo("pickle-wire");
  }

  @Test
  void what_was_looked_at_is_said_where_it_lies_and_elsewhere_one_is_told_the_way() {
    Bencher demo = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
    demo.goTo("cut-blanks").pass(Duration.ofMinutes(9)).press("d");
    assertThat(demo.notice()).endsWith("First to the wait that is over: space goes there.");
    demo.press("space", "d");
    assertThat(demo.model().due()).isEmpty();
  }

  @Test
  void a_timers_key_that_lights_says_so() {
    Bencher demo = Bencher.withTheDemo().press("enter").toSolder(6);
    demo.press("!", "space").goTo("anneal-blanks");
    assertThat(BenchPlace.commonAct(demo.model(), demo.at())).isEqualTo(Act.ONWARD);
    String keys = Pages.of(demo.model()).open().toString();
    assertThat(keys).contains("torch lit").doesNotContain("start its timer");
    demo.press("w");
    assertThat(demo.model().hotWork().lit()).isPresent();
    assertThat(Pages.of(demo.model()).open().toString()).contains("start its timer");
  }

  @Test
  void where_the_other_work_is_the_next_step_the_foot_says_no_more() {
    Bencher demo = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
    demo.goTo("cut-blanks");
    for (int i = 0; i < 40 && BenchPlace.commonAct(demo.model(), demo.at()) != Act.ONWARD; i++) {
      demo.press("space");
    }
    assertThat(Pages.of(demo.model()).open().get(0).says()).isEqualTo("on to the next step");
    demo.press("space");
    assertThat(demo.at().step().id().word()).isEqualTo("anneal-blanks");
  }
}
