package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linkwright.job.Fact;
import linkwright.job.WaitEnd;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** What is pickled is done when it was looked at: the clock only reminds. */
class LookedTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  private String step() {
    return bench.at().step().id().word();
  }

  private String foot() {
    return Pages.of(bench.model()).open().get(0).says();
  }

  private List<WaitEnd> ends() {
    return bench.entered(Fact.TimerAnswered.class).stream().map(Fact.TimerAnswered::how).toList();
  }

  @Test
  void the_key_that_ends_the_step_once_it_is_due_is_a_look() {
    bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(9));
    assertThat(foot()).isEqualTo("looked: done");
    bench.press("space");
    assertThat(ends()).containsExactly(WaitEnd.LOOKED);
    assertThat(bench.state().course().stepsDone()).contains(new StepId("pickle-wire"));
  }

  @Test
  void the_key_that_takes_them_out_once_it_is_due_is_a_look() {
    bench.toSolder(6).type("4").press("space");
    bench.goTo("pickle-links").press("space").pass(Duration.ofMinutes(9));
    assertThat(foot()).isEqualTo("looked: done");
    bench.press("space");
    assertThat(ends()).containsOnly(WaitEnd.LOOKED);
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
  }

  @Test
  void what_only_cools_or_tumbles_ends_by_its_time() {
    bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(9)).press("w");
    assertThat(ends()).as("begun anew, nobody looked").containsExactly(WaitEnd.TIME);
  }

  /** The wire lies in the pickle from the start; blanks and rings are cut meanwhile. */
  private void wireForgotten() {
    bench.goTo("pickle-wire").press("space");
    bench.goTo("cut-blanks").type("6").press("space");
    bench.goTo("cut-rings").type("12").press("space");
    bench.goTo("pickle-wire");
  }

  @Test
  void from_a_step_that_the_work_went_past_it_leads_to_where_pieces_wait() {
    wireForgotten();
    bench.pass(Duration.ofMinutes(4)).press("d", "space").seeCautions();
    assertThat(step()).isEqualTo("anneal-blanks");
    assertThat(bench.state().course().stepsDone()).contains(new StepId("pickle-wire"));
  }

  @Test
  void and_nothing_that_was_passed_is_walked_or_begun_again() {
    wireForgotten();
    int opened = bench.entered(Fact.StepOpened.class).size();
    bench.pass(Duration.ofMinutes(4)).press("d", "space", "space");
    List<Fact.StepOpened> all = bench.entered(Fact.StepOpened.class);
    assertThat(all.subList(opened, all.size()))
        .extracting(each -> each.step().word())
        .containsExactly("anneal-blanks");
    assertThat(bench.entered(Fact.TimerStarted.class)).hasSize(1);
  }

  @Test
  void who_has_not_gone_past_goes_on_to_the_next_step() {
    bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(4)).press("d", "space");
    assertThat(bench.at().number()).isEqualTo(4);
  }

  @Test
  void what_lay_there_long_after_its_time_teaches_nothing() {
    bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(9)).press("space");
    assertThat(pickled()).hasSize(1);
    Bencher late = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
    late.pass(Duration.ofMinutes(40)).press("space");
    assertThat(Bencher.SHELF.taught("job", late.entries(), late.job().state()).pickleSeconds())
        .isEmpty();
  }

  private List<Double> pickled() {
    return Bencher.SHELF.taught("job", bench.entries(), bench.job().state()).pickleSeconds();
  }
}
