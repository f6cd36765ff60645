package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A press counts at once; a key that bounces or is held counts once. */
class BounceTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  private Bencher toSolder(int links) {
    bench.goTo("cut-blanks").type(Integer.toString(links)).press("space");
    bench.goTo("anneal-blanks").together();
    bench.goTo("form-links").type(Integer.toString(links)).press("space");
    return bench.goTo("solder-links").pass(Duration.ofSeconds(5));
  }

  private int soldered() {
    return bench.pile("link").waitingFor(Stage.PICKLED);
  }

  /** Held: the system waits half a second, then repeats thirty times a second. */
  private void hold(String key, int millis) {
    bench.pressEvery(1, 1, key).pressEvery(500, 1, key).pressEvery(33, millis / 33, key);
  }

  @Nested
  class Counting {
    @BeforeEach
    void solder() {
      toSolder(9);
    }

    @ParameterizedTest
    @ValueSource(longs = {500, 250, 160})
    void six_pieces_in_a_quick_hand_are_six(long millis) {
      bench.pressEvery(millis, 6, "page-down");
      assertThat(soldered()).isEqualTo(6);
    }

    @Test
    void a_bounce_counts_once_and_is_told() {
      bench.pressEvery(40, 2, "page-down");
      assertThat(soldered()).isEqualTo(1);
      assertThat(bench.notice()).contains("too soon");
      bench.pressEvery(400, 1, "page-down");
      assertThat(soldered()).isEqualTo(2);
    }

    @Test
    void another_key_is_no_bounce() {
      bench.pressEvery(40, 1, "page-down").pressEvery(40, 1, "u");
      assertThat(soldered()).isZero();
    }

    @Test
    void a_number_that_was_typed_is_none() {
      bench.pressEvery(40, 1, "space").type("3").pressEvery(40, 1, "space");
      assertThat(soldered()).isEqualTo(4);
    }

    @Test
    void what_comes_without_a_time_is_none() {
      for (int i = 0; i < 3; i++) {
        bench.take(new Message.KeyPressed(Key.of(" ")));
      }
      assertThat(soldered()).isEqualTo(3);
    }

    @Test
    void the_last_piece_does_not_end_the_step_with_it() {
      bench.pressEvery(500, 11, "page-down");
      assertThat(soldered()).isEqualTo(9);
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
      bench.pressEvery(800, 1, "page-down");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pickle-links"));
    }
  }

  /** What is said of a flame is said by somebody who has read what is asked. */
  @Nested
  class AQuestionAboutFlames {
    @BeforeEach
    void leaveWithAFlameLit() {
      toSolder(9).press("space", "space");
      assertThat(bench.model().hotWork().open()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"space", "n", "page-down"})
    void is_not_answered_before_it_could_be_read(String key) {
      bench.pressEvery(900, 1, "q").pressEvery(100, 1, key);
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
      assertThat(bench.model().hotWork().open()).isTrue();
      assertThat(bench.notice()).startsWith("Read the question first");
      bench.pressEvery(800, 1, "space");
      assertThat(bench.model().hotWork().open()).isFalse();
    }

    @Test
    void is_told_so_still_after_a_key_that_means_nothing_there() {
      bench.pressEvery(900, 1, "q").pressEvery(100, 1, "space").pressEvery(900, 1, "a");
      assertThat(bench.notice()).startsWith("Read the question first");
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
    }

    @ParameterizedTest
    @ValueSource(strings = {"space", "n"})
    void is_put_once_as_an_unfinished_job_is_closed_beside_one(String answer) {
      for (String key : List.of("esc", "i", "c", "ctrl-k")) {
        bench.pressEvery(2000, 1, key);
      }
      assertThat(bench.form().fields().get(0).trouble().orElseThrow())
          .endsWith(" are good: close it all the same?");
      bench.pressEvery(2000, 1, "ctrl-k");
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
      assertThat(bench.entered(Fact.JobClosed.class)).isEmpty();
      bench.pressEvery(2000, 1, answer);
      assertThat(bench.entered(Fact.JobClosed.class)).hasSize(1);
      assertThat(bench.model().hotWork().open()).isEqualTo(answer.equals("n"));
    }

    @Test
    void leads_back_to_the_form_of_a_job_that_she_closes_after_all_not() {
      for (String key : List.of("esc", "i", "c", "ctrl-k", "ctrl-k", "esc")) {
        bench.pressEvery(2000, 1, key);
      }
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.WEIGH_IN);
      assertThat(bench.model().held().form()).isPresent();
      assertThat(bench.entered(Fact.JobClosed.class)).isEmpty();
    }

    @Test
    void is_not_answered_while_it_is_not_on_the_screen() {
      bench.pressEvery(900, 1, "q");
      Optional<Instant> later = Optional.of(bench.model().steady().plusSeconds(5));
      bench.take(new Message.KeyPressed(Key.of(" "), later));
      assertThat(bench.model().hotWork().open()).isTrue();
    }
  }

  @Nested
  class Held {
    @BeforeEach
    void solder() {
      toSolder(9);
    }

    @Test
    void counts_one_and_offers_it_to_be_done_again() {
      hold("page-down", 1500);
      assertThat(soldered()).isEqualTo(1);
      assertThat(bench.notice()).contains("Do that one again?");
      bench.pressEvery(400, 1, "page-down");
      assertThat(soldered()).isZero();
      assertThat(bench.at().redo()).isEqualTo(1);
      assertThat(bench.entered(Fact.PiecesSentBack.class)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"esc", "v", "5", "b"})
    void any_other_key_lets_it_stand(String key) {
      hold("page-down", 1500);
      bench.press(key);
      assertThat(soldered()).isEqualTo(1);
      assertThat(bench.entered(Fact.PiecesSentBack.class)).isEmpty();
      assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
    }

    @Test
    void for_ten_seconds_asks_once_and_counts_one() {
      hold("page-down", 10_000);
      assertThat(soldered()).isEqualTo(1);
    }
  }

  @Nested
  class WhereItWouldEndSomething {
    @Test
    void a_card_is_not_turned_by_the_press_that_turned_the_one_before() {
      bench.pressEvery(1000, 1, "page-down").pressEvery(600, 1, "page-down");
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(1);
      bench.pressEvery(600, 1, "page-down");
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(2);
    }

    @Test
    void a_held_pedal_passes_one_card_and_no_step() {
      bench.pass(Duration.ofSeconds(5));
      hold("page-down", 5000);
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(1);
    }

    @Test
    void a_burst_at_a_batch_ends_that_and_begins_nothing_else() {
      bench.goTo("cut-blanks").type("8").press("space");
      bench.goTo("anneal-blanks").together();
      bench.pass(Duration.ofSeconds(5));
      String step = bench.at().step().id().toString();
      int entered = bench.entered(Fact.class).size();
      bench.pressEvery(500, 1, "page-down").pressEvery(500, 9, "page-down");
      assertThat(bench.at().step().id()).isNotEqualTo(new StepId("anneal-blanks"));
      assertThat(step).contains("anneal-blanks");
      assertThat(bench.entered(Fact.class).size() - entered).isEqualTo(1);
      assertThat(bench.notice()).contains("too soon");
    }

    @Test
    void the_first_piece_of_a_step_is_counted_only_after_a_look() {
      toSolder(9).press("b").pass(Duration.ofSeconds(5));
      bench.pressEvery(900, 1, "page-down");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
      bench.pressEvery(500, 4, "page-down");
      assertThat(soldered()).isZero();
      bench.pressEvery(800, 1, "page-down").pressEvery(160, 5, "page-down");
      assertThat(soldered()).isEqualTo(6);
    }

    @Test
    void what_is_asked_of_a_number_is_not_answered_by_the_press_that_put_it() {
      bench.goTo("cut-blanks").type("999").pressEvery(900, 1, "space");
      bench.pressEvery(300, 2, "space");
      assertThat(bench.pile("link").alive()).isZero();
      assertThat(bench.notice()).contains("too soon");
      bench.pressEvery(800, 1, "space");
      assertThat(bench.pile("link").alive()).isEqualTo(999);
    }

    @Test
    void what_a_form_asks_as_it_is_kept_is_not_answered_by_the_press_that_put_it() {
      Bencher closing = Bencher.withTheDemo().press("i", "c").pressEvery(900, 1, "ctrl-k");
      closing.pressEvery(100, 3, "ctrl-k").pressEvery(600, 1, "ctrl-k");
      assertThat(closing.entered(Fact.JobClosed.class)).isEmpty();
      assertThat(closing.form().fields().get(0).trouble().orElseThrow())
          .endsWith("close it all the same?");
      assertThat(closing.notice()).contains("too soon");
      closing.pressEvery(800, 1, "ctrl-k");
      assertThat(closing.entered(Fact.JobClosed.class)).hasSize(1);
    }

    @Test
    void a_bouncing_pedal_does_not_skip_the_pickle() {
      bench.goTo("pickle-wire").pressEvery(900, 1, "page-down").pressEvery(80, 3, "page-down");
      assertThat(bench.entered(Fact.TimerStarted.class)).hasSize(1);
      assertThat(bench.entered(Fact.TimerAnswered.class)).isEmpty();
    }
  }

  /** A pause that each press began anew would never end for whoever treads steadily. */
  @Nested
  class ASteadyPedal {
    @ParameterizedTest
    @ValueSource(longs = {500, 550, 690})
    void passes_cards_and_goes_on_to_the_work_behind_them(long millis) {
      bench.pass(Duration.ofSeconds(5)).pressEvery(millis, 60, "page-down");
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSizeGreaterThan(4);
      assertThat(bench.at().number()).isGreaterThan(1);
    }

    @Test
    void goes_from_a_batch_to_the_next_step_once_no_burst_of_counts_lasts_so_long() {
      bench.goTo("cut-blanks").type("8").press("space");
      bench.goTo("anneal-blanks").together();
      bench.pass(Duration.ofSeconds(5)).pressEvery(550, 1, "page-down");
      StepId step = bench.at().step().id();
      int entered = bench.entered(Fact.class).size();
      bench.pressEvery(550, 9, "page-down");
      assertThat(bench.at().step().id()).isEqualTo(step);
      assertThat(bench.entered(Fact.class)).hasSize(entered);
      bench.pressEvery(550, 4, "page-down");
      assertThat(bench.entered(Fact.class)).hasSizeGreaterThan(entered);
    }

    @Test
    void answers_what_is_asked_of_a_number_after_it_stood() {
      bench.goTo("cut-blanks").type("999").pressEvery(900, 1, "space").pressEvery(550, 10, "space");
      assertThat(bench.pile("link").alive()).isEqualTo(999);
    }

    @ParameterizedTest
    @ValueSource(longs = {40, 100, 200})
    void that_bounces_passes_one_card(long millis) {
      bench.pass(Duration.ofSeconds(5)).pressEvery(millis, 60, "page-down");
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(1);
    }

    @Test
    void says_of_no_flame_that_it_is_out_before_that_was_asked_for_five_seconds() {
      toSolder(9).press("space", "space").goTo("look-over");
      assertThat(BenchPlace.commonAct(bench.model(), bench.at())).isEqualTo(Act.SHUT_FIRST);
      bench.pressEvery(900, 1, "page-down").pressEvery(500, 9, "page-down");
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.HOT_WORK);
      assertThat(bench.model().hotWork().open()).isTrue();
      bench.pressEvery(550, 2, "page-down");
      assertThat(bench.model().hotWork().open()).isFalse();
    }
  }

  /** Nobody has read yet what the press before it told. */
  @Nested
  class WhatWasTold {
    @Test
    void of_a_flame_to_whoever_takes_over_outlives_a_bounce() {
      toSolder(9).press("space", "space").press("@").type("Cleo");
      bench.pressEvery(2000, 1, "ctrl-k").pressEvery(100, 3, "ctrl-k");
      assertThat(bench.notice()).startsWith("A flame is lit: look together").contains("“Cleo”");
      bench.pressEvery(2000, 1, "ctrl-k");
      assertThat(bench.notice()).doesNotContain("A flame is lit");
    }

    @Test
    void of_a_wait_stands_before_that_the_next_came_too_soon() {
      bench.goTo("pickle-wire").pressEvery(900, 1, "page-down").pressEvery(80, 3, "page-down");
      assertThat(bench.notice())
          .startsWith("Pickle the wire: the timer runs.")
          .containsOnlyOnce("too soon");
    }

    @Test
    void a_key_that_opened_a_form_is_typed_there_however_soon() {
      bench.press("esc", "k").pressEvery(2000, 1, "n").pressEvery(80, 2, "n");
      assertThat(bench.form().text("text")).isEqualTo("nn");
    }
  }

  @Test
  void in_a_form_a_held_key_does_what_it_always_did() {
    bench.press("esc", "k", "n").type("too long").pressEvery(33, 8, "backspace");
    assertThat(bench.form().text("text")).isEmpty();
  }

  @Test
  void with_caps_lock_on_keys_mean_the_same() {
    toSolder(3).press("R");
    assertThat(((BenchHeld) bench.model().held()).ask()).isInstanceOf(BenchAsk.Why.class);
  }

  @Test
  void pieces_counted_one_by_one_in_a_row_can_fail_together() {
    toSolder(3).press("space").press("space").press("space");
    assertThat(soldered()).isEqualTo(3);
    bench.type("2").press("r", "1");
    assertThat(soldered()).isEqualTo(1);
    assertThat(bench.at().redo()).isEqualTo(2);
  }

  @Test
  void esc_in_a_question_leads_back_to_the_bench() {
    toSolder(3).press("r", "esc");
    assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
    bench.press("y", "esc");
    assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
    assertThat(bench.entered(Fact.PiecesSentBack.class)).isEmpty();
  }
}
