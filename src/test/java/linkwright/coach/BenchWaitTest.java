package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.TimerRun;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchWaitTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  private Bencher pickling() {
    bench.goTo("cut-blanks").type("6").press("space");
    bench.goTo("anneal-blanks").together();
    bench.goTo("form-links").type("6").press("space");
    bench.goTo("solder-links").type("4").press("space");
    return bench.goTo("pickle-links").press("space");
  }

  private Optional<TimerRun> running() {
    return bench.model().timers().next();
  }

  private long left() {
    return running().orElseThrow().left(bench.model().steady()).toSeconds();
  }

  private String shown() {
    return Shown.draw(bench.model(), Glyphs.FULL).text();
  }

  @Nested
  class AtAStepThatCountsNothing {
    @ParameterizedTest
    @ValueSource(strings = {"space", "page-down", "a", "enter"})
    void no_press_ends_the_wait_before_it_is_over(String key) {
      bench.goTo("pickle-wire").press("space");
      bench.press(20, key);
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pickle-wire"));
      assertThat(bench.entered(Fact.TimerAnswered.class)).isEmpty();
      assertThat(bench.state().course().stepsDone()).doesNotContain(new StepId("pickle-wire"));
      assertThat(running()).isPresent();
    }

    @Test
    void its_key_offers_no_other_work_where_none_waits() {
      bench.goTo("pickle-wire").press("space");
      assertThat(shown()).contains("till when it runs").doesNotContain("other work meanwhile");
    }

    @Test
    void it_says_what_is_left_and_how_it_ends() {
      bench.goTo("pickle-wire").press("space", "space");
      assertThat(bench.notice())
          .isEqualTo(
              "Pickle the wire: till 08:08, and no other work waits. Clean and white already?"
                  + " d: looked, done.");
    }

    @Test
    void one_key_says_that_it_was_looked_to_and_the_next_goes_on() {
      bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(3)).press("d");
      assertThat(running()).isEmpty();
      assertThat(bench.state().course().stepsDone()).isEmpty();
      bench.press("space");
      assertThat(bench.state().course().stepsDone()).contains(new StepId("pickle-wire"));
    }

    @Test
    void going_to_the_next_step_leaves_it_running_and_once_it_is_over_the_key_leads_back() {
      bench.goTo("pickle-wire").press("space").press("n").seeCautions();
      assertThat(running()).isPresent();
      bench.pass(Duration.ofMinutes(9));
      int entries = bench.entered(Fact.StepDone.class).size();
      bench.press("space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pickle-wire"));
      assertThat(bench.entered(Fact.StepDone.class)).hasSize(entries);
      assertThat(bench.entered(Fact.TimerAnswered.class)).isEmpty();
      bench.press("space");
      assertThat(running()).isEmpty();
      assertThat(bench.state().course().stepsDone()).contains(new StepId("pickle-wire"));
    }
  }

  @Nested
  class WithPiecesInIt {
    @Test
    void the_key_goes_to_the_nearest_other_work_and_leaves_it_running() {
      pickling().press("space").seeCautions();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isZero();
      assertThat(running()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "2"})
    void neither_all_nor_a_number_takes_them_out(String key) {
      pickling().press(key);
      if (key.equals("2")) {
        bench.press("space");
      }
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isZero();
      assertThat(running()).isPresent();
    }

    @Test
    void a_look_ends_it_and_then_they_go_through() {
      pickling().pass(Duration.ofMinutes(3)).press("d", "space");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
    }

    @Test
    void a_look_far_too_early_is_asked_once_and_teaches_nothing() {
      pickling().press("d");
      assertThat(bench.notice()).startsWith("Pickle the links, 4 links: clean so soon");
      assertThat(running()).isPresent();
      bench.press("d");
      assertThat(running()).isEmpty();
      assertThat(Bencher.SHELF.taught("job", bench.entries(), bench.job().state()).pickleSeconds())
          .isEmpty();
    }

    @Test
    void each_lot_is_looked_at_though_both_are_over() {
      twoMore().pass(Duration.ofMinutes(9)).press("d", "space");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
      assertThat(running()).as("the second lot is still asked for").isPresent();
      bench.press("d", "space");
      assertThat(bench.pile("link").atOrPast(Stage.PICKLED)).isEqualTo(6);
    }

    @Test
    void undo_straight_after_says_that_it_is_a_wait_and_where_it_is_ended() {
      Bencher fresh = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space", "u");
      assertThat(fresh.notice()).startsWith("Undo strikes no wait. Last: “timer set: Pickle");
      assertThat(fresh.model().timers().next()).isPresent();
    }

    @Test
    void where_gas_burns_its_own_key_starts_no_wait_before_a_flame_is_said_to_be_lit() {
      Bencher fresh = Bencher.with(new Fact.JobOpened("Rings", "jump-rings")).goTo("anneal-wire");
      fresh.press("space", "space").pass(Duration.ofMinutes(9)).press("space", "space");
      fresh.goTo("anneal-wire");
      assertThat(fresh.model().hotWork().lit()).isEmpty();
      fresh.press("w");
      assertThat(fresh.entered(Fact.TimerStarted.class)).hasSize(1);
      fresh.press("space");
      assertThat(fresh.model().hotWork().lit()).isPresent();
      assertThat(fresh.entered(Fact.TimerStarted.class)).hasSize(1);
      assertThat(fresh.press("w").entered(Fact.TimerStarted.class)).hasSize(2);
    }

    /** Four went in; three minutes later two more. */
    private Bencher twoMore() {
      pickling().pass(Duration.ofMinutes(3));
      bench.goTo("solder-links").type("2").press("space").goTo("pickle-links");
      return bench.press("space");
    }

    @Test
    void those_that_go_in_later_have_a_wait_of_their_own() {
      twoMore();
      assertThat(bench.state().timers().running())
          .extracting(TimerRun::named)
          .containsExactly("Pickle the links, 4 links", "Pickle the links, 2 links");
      bench.press("space").seeCautions();
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).as("nothing came out").isZero();
      bench.pass(Duration.ofMinutes(5)).goTo("pickle-links").press("space");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).isEqualTo(2);
      assertThat(left()).isBetween(150L, 180L);
      bench.press("a", "b").seeCautions().press("a", "2", "space");
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).as("stay in").isEqualTo(2);
      bench.pass(Duration.ofMinutes(3)).goTo("pickle-links").press("space");
      assertThat(bench.pile("link").atOrPast(Stage.PICKLED)).isEqualTo(6);
      assertThat(running()).isEmpty();
    }

    @Test
    void what_is_done_to_the_whole_chain_waits_while_the_chain_pickles() {
      bench.goTo("cut-blanks").type("3").press("space");
      bench.goTo("anneal-blanks").together();
      bench.goTo("form-links").type("3").press("space");
      bench.goTo("solder-links").type("3").press("space");
      bench.goTo("pickle-links").together();
      bench.goTo("check-links").press("a").goTo("true-links").press("a");
      bench.goTo("cut-rings").type("4").press("space");
      bench.goTo("join").press("a").goTo("pickle-chain").press("space");
      assertThat(running()).isPresent();
      for (String later : List.of("fit-clasp", "finish")) {
        bench.goTo(later);
        assertThat(Pages.of(bench.model()).open().get(0).act()).contains(Act.MEANWHILE);
        bench.press("w", "a");
        bench.goTo(later).press("space");
        assertThat(bench.entered(Fact.StepDone.class))
            .noneMatch(d -> d.step().word().equals(later));
      }
      assertThat(bench.state().timers().running()).hasSize(1);
      assertThat(bench.pile("link").finished()).isZero();
    }

    @Test
    void which_is_due_when_stands_at_the_step() {
      twoMore();
      assertThat(shown()).contains("in it", "4 for 4:5", "2 for 8:00");
      bench.press("d");
      assertThat(bench.notice()).isEqualTo("Pickle the links, 4 links: looked, done.");
      bench.press("space");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
    }

    @Test
    void what_was_soldered_by_mistake_and_taken_back_is_in_no_wait() {
      pickling();
      bench.goTo("solder-links").press("u");
      assertThat(bench.notice()).startsWith("Undo strikes no wait. Last: ");
      assertThat(bench.entered(Fact.Struck.class)).isEmpty();
      bench.press("u");
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).isZero();
      bench.type("3").press("space").goTo("pickle-links").press("space");
      assertThat(bench.state().timers().running()).hasSize(2);
    }

    @Test
    void none_goes_through_that_was_not_in_whatever_key_is_pressed() {
      bench.goTo("cut-blanks").type("6").press("space");
      bench.goTo("anneal-blanks").together();
      bench.goTo("form-links").type("6").press("space");
      bench.goTo("solder-links").type("4").press("space");
      bench.goTo("pickle-links").press("a");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isZero();
      assertThat(left()).isEqualTo(480);
    }

    @Test
    void once_it_is_over_they_go_through_together() {
      pickling().pass(Duration.ofMinutes(9)).press("space");
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
      assertThat(running()).isEmpty();
    }
  }

  @Nested
  class TheFireWatch {
    /** Lit, worked and shut, so that it runs; then at the step where it is kept. */
    private Bencher watching() {
      return bench
          .goTo("anneal-wire")
          .press("space", "space")
          .goTo("look-over")
          .press("space", "space");
    }

    @Test
    void is_passed_by_no_press_till_its_time_is_over() {
      watching();
      for (int minute = 0; minute < 48; minute++) {
        bench.pass(Duration.ofSeconds(52)).press("space", "a", "d", "z", "enter");
      }
      assertThat(bench.model().watch()).isPresent();
      assertThat(bench.state().course().stepsDone()).doesNotContain(new StepId("look-over"));
      // An hour without an entry is a break: the first press comes back to the bench.
      bench.pass(Duration.ofMinutes(20)).press("space").seeCautions();
      bench.press("space");
      assertThat(bench.model().watch()).isEmpty();
      assertThat(bench.state().course().stepsDone()).contains(new StepId("look-over"));
    }

    @Test
    void a_hot_step_that_is_done_again_asks_for_the_flame_again_and_is_a_heat() {
      bench.goTo("anneal-wire").press("space", "space").press("!", "space");
      bench.press("esc", "b").goTo("anneal-wire").press("space");
      assertThat(bench.model().hotWork().lit()).isPresent();
      assertThat(bench.entered(Fact.StepDone.class)).hasSize(1);
      bench.press("space");
      assertThat(bench.entered(Fact.StepDone.class)).hasSize(2);
    }

    @Test
    void and_what_was_said_of_the_flames_is_out_of_reach_of_undo() {
      bench.goTo("anneal-wire").press("space", "space").press("!", "space");
      Instant began = bench.model().watch().orElseThrow().startedAt();
      bench.press("esc", "b").press(4, "u");
      assertThat(bench.model().hotWork().open()).isFalse();
      assertThat(bench.model().watch().orElseThrow().startedAt()).isEqualTo(began);
    }

    @Test
    void is_not_a_timer_of_her_own_that_is_called_so() {
      bench.press("esc", "m", "n").type("Fire watch").press("enter").type("1 min").press("ctrl-k");
      assertThat(bench.model().watch()).isEmpty();
      watching();
      assertThat(bench.entered(Fact.TimerStarted.class))
          .containsExactly(new Fact.TimerStarted("Fire watch", 60));
      assertThat(bench.model().watch().orElseThrow().seconds()).isEqualTo(3600);
    }

    @Test
    void is_ended_at_the_timers_for_a_reason_only() {
      watching().press("esc", "m", "enter");
      assertThat(bench.form().purpose()).isEqualTo(Form.Purpose.END_WAIT);
      bench.press("ctrl-k");
      assertThat(bench.model().watch()).isPresent();
      bench.type("a colleague watches").press("ctrl-k");
      assertThat(bench.model().watch()).isEmpty();
      assertThat(bench.entered(BenchFact.WatchEnded.class).get(0).why())
          .contains("a colleague watches");
    }

    @Test
    void is_the_benchs_and_goes_on_when_the_job_is_closed() {
      watching();
      assertThat(shown()).contains("Fire watch");
      bench.press("esc", "i", "c", "ctrl-k", "ctrl-k", "esc");
      assertThat(bench.state().course().closed()).isTrue();
      assertThat(bench.model().watch()).isPresent();
      bench.press("m");
      assertThat(shown()).contains("Fire watch").doesNotContain("No timer runs.");
      bench.press("esc").pass(Duration.ofDays(365));
      bench.press("m");
      assertThat(shown()).contains("No timer runs.").doesNotContain("Fire watch");
    }
  }

  @Nested
  class TheClock {
    /** Heated, then a quarter of an hour of other things, the clock set meanwhile. */
    @ParameterizedTest
    @ValueSource(longs = {-7200, -600, 0, 600, 2700})
    void set_between_the_last_heat_and_the_statement_moves_no_watch(long seconds) {
      bench.goTo("anneal-wire").press("space", "space");
      bench.pass(Duration.ofMinutes(5)).setClock(Duration.ofSeconds(seconds));
      bench.pass(Duration.ofMinutes(10)).press("!", "space");
      long run = bench.model().watch().orElseThrow().left(bench.model().steady()).toSeconds();
      assertThat(run).isBetween(45 * 60L - 5, 45 * 60L);
    }

    @Test
    void set_back_while_it_runs_changes_nothing_and_it_says_to_look() {
      bench.goTo("pickle-wire").press("space").pass(Duration.ofMinutes(1));
      bench.setClock(Duration.ofHours(-2));
      assertThat(bench.notice()).contains("look at the pieces");
      assertThat(left()).isEqualTo(7 * 60);
      bench.setClock(Duration.ofHours(5));
      assertThat(left()).isEqualTo(7 * 60);
      bench.pass(Duration.ofMinutes(7));
      assertThat(bench.model().timers().ringing(bench.model().steady())).hasSize(1);
    }

    @Test
    void set_back_over_a_restart_leaves_never_more_than_was_set() {
      bench.goTo("pickle-wire").press("space").setClock(Duration.ofDays(-2000)).restart();
      assertThat(left()).isEqualTo(8 * 60);
      assertThat(bench.notice()).contains("look at the pieces");
      bench.pass(Duration.ofMinutes(9));
      assertThat(bench.model().timers().ringing(bench.model().steady())).hasSize(1);
    }

    @Test
    void gone_on_for_a_year_shows_no_more_digits_than_were_set() {
      bench.goTo("pickle-wire").press("space").pass(Duration.ofDays(365)).restart();
      assertThat(left()).isEqualTo(-3600);
      bench.press("m");
      assertThat(shown()).contains("due over 1 h");
    }
  }
}
