package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Caution;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchTest {
  @Test
  void a_ring_beyond_what_the_chain_takes_is_spare_though_it_failed() {
    Bencher rings = Bencher.withTheDemo().press("enter").goTo("join");
    int wanted = rings.at().wanted();
    rings.goTo("cut-rings").type("" + (wanted + 1)).press("space");
    if (rings.pile("ring").alive() == 0) {
      rings.press("space");
    }
    // The first press says that the torch is lit.
    rings.goTo("join").press("space").press("r", "1").type("" + wanted).press("space");
    assertThat(rings.pile("ring").atOrPast(Stage.JOINED)).isEqualTo(wanted);
    assertThat(rings.pile("ring").inRedo()).isEqualTo(1);
    rings.goTo("join");
    assertThat(BenchPlace.commonAct(rings.model(), rings.at())).isEqualTo(Act.ONWARD);
    rings.press("space", "space");
    assertThat(rings.pile("ring").atOrPast(Stage.JOINED)).isEqualTo(wanted);
  }

  private final Bencher bench = Bencher.withTheDemo().press("enter");

  @Nested
  class Cautions {
    @Test
    void each_caution_of_a_step_is_seen_before_anything_is_done_there() {
      List<String> cards =
          Cards.of(bench.model(), bench.at()).cautions().stream().map(Caution::id).toList();
      assertThat(cards).contains("ventilation", "lone-work").doesNotContain("metal-on-skin");
      for (String card : cards) {
        assertThat(bench.caution()).map(Caution::id).contains(card);
        bench.press("space");
        assertThat(bench.entered(Fact.StepDone.class)).isEmpty();
      }
      assertThat(bench.caution()).isEmpty();
      assertThat(bench.entered(Fact.CautionSeen.class))
          .extracting(Fact.CautionSeen::caution)
          .containsExactlyElementsOf(cards);
      assertThat(bench.entered(Fact.StepOpened.class)).hasSize(1);
    }

    @Test
    void while_one_is_up_no_key_counts_or_takes_it_for_seen() {
      List<Entry> before = bench.entries();
      bench.press("a", "r", "s", "t", "1", "w");
      assertThat(bench.entries()).isEqualTo(before);
      bench.press("n");
      assertThat(bench.entered(Fact.CautionSeen.class)).isEmpty();
      bench.press("esc").press("enter");
      assertThat(bench.caution()).isPresent();
    }

    @Test
    void one_that_was_seen_in_this_sitting_is_not_shown_again() {
      bench.goTo("solder-test");
      int seen = bench.entered(Fact.CautionSeen.class).size();
      bench.press("b", "n");
      assertThat(bench.entered(Fact.CautionSeen.class)).hasSize(seen);
    }
  }

  @Nested
  class Counting {
    @Test
    void a_number_is_for_many() {
      bench.toSolder(12).type("5").press("space");
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).isEqualTo(5);
      assertThat(bench.at().waiting()).isEqualTo(7);
      assertThat(((BenchHeld) bench.model().held()).digits()).isEmpty();
    }

    @Test
    void too_many_are_refused_with_a_sentence_and_nothing_is_counted() {
      bench.toSolder(3);
      JobState before = bench.state();
      bench.type("4").press("space");
      assertThat(bench.notice())
          .isEqualTo("Only 3 wait; 4 cannot come through. Type a smaller number.");
      assertThat(bench.model().notice().trouble()).isTrue();
      assertThat(bench.state()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"space", "r", "s"})
    void none_is_no_number_to_count(String key) {
      bench.toSolder(3);
      JobState before = bench.state();
      bench.type("0").press(key);
      assertThat(bench.state()).isEqualTo(before);
      assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
      assertThat(bench.notice()).contains("0");
    }

    @Test
    void a_mistyped_digit_is_taken_back() {
      bench.toSolder(12).type("52").press("backspace", "space");
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).isEqualTo(5);
    }

    @Test
    void one_key_takes_all_that_wait() {
      bench.toSolder(12).press("a");
      assertThat(bench.at().waiting()).isZero();
      assertThat(bench.pile("link").waitingFor(Stage.PICKLED)).isEqualTo(12);
    }

    @Test
    void a_step_for_all_together_takes_new_and_redone_ones_at_once() {
      bench.toSolder(6).press("a");
      bench.goTo("pickle-links").type("2").press("r", "1").together();
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(6);
    }

    @Test
    void more_is_cut_than_is_needed_only_when_a_number_says_so() {
      bench.goTo("cut-blanks").press(60, "space");
      int enough = bench.pile("link").alive();
      assertThat(enough).isLessThan(60);
      bench.goTo("cut-blanks").type("1").press("space");
      assertThat(bench.pile("link").alive()).isEqualTo(enough + 1);
    }

    @Test
    void the_wire_is_less_by_what_was_cut_and_a_shortage_is_told() {
      double before = bench.job().standing().stockLeft().leftMm(PieceKind.LINK);
      double each = bench.job().standing().eachMm().get(PieceKind.LINK);
      bench.goTo("cut-blanks").type("5").press("space");
      assertThat(bench.job().standing().stockLeft().leftMm(PieceKind.LINK))
          .isCloseTo(before - 5 * each, org.assertj.core.data.Offset.offset(1e-6));
      bench.type("90").press("space", "space");
      assertThat(bench.notice()).contains("wire on hand gives only");
    }
  }

  @Nested
  class SteppingAway {
    @Test
    void asks_first_whether_every_flame_is_out_if_one_was_lit() {
      bench.goTo("anneal-wire").press("space", "y");
      assertThat(bench.entered(Fact.SteppedAway.class)).isEmpty();
      bench.press("esc");
      assertThat(bench.state().times().seenAt()).isPresent();
      bench.press("y", "space");
      assertThat(bench.entered(Fact.SteppedAway.class))
          .containsExactly(new Fact.SteppedAway(true, true, true));
      assertThat(BenchAnswers.away(bench.model())).isTrue();
      assertThat(bench.model().hotWork().open()).isFalse();
    }

    @Test
    void leaves_a_flame_to_whoever_stays_with_it() {
      bench.goTo("anneal-wire").press("space", "y", "n");
      assertThat(bench.entered(Fact.SteppedAway.class))
          .containsExactly(new Fact.SteppedAway(false, false, false));
      assertThat(bench.model().hotWork().open()).isTrue();
    }

    @Test
    void asks_nothing_where_nothing_was_lit() {
      bench.goTo("cut-blanks").press("y");
      assertThat(BenchAnswers.away(bench.model())).isTrue();
    }

    @Test
    void stops_the_hours_but_not_the_timers() {
      bench.goTo("pickle-wire").press("w").press("y");
      double hours = bench.state().times().totalSeconds();
      bench.pass(Duration.ofMinutes(20)).press("space");
      assertThat(bench.state().times().totalSeconds()).isEqualTo(hours);
      assertThat(bench.state().timers().ringing(bench.now())).hasSize(1);
    }
  }

  @Nested
  class TimersThatRing {
    @Test
    void ring_the_bell_every_ten_seconds_until_they_are_answered() {
      bench.goTo("pickle-wire").press("w");
      bench.pass(Duration.ofMinutes(8));
      assertThat(bench.bells()).isEqualTo(1);
      for (int second = 0; second < 60; second++) {
        bench.pass(Duration.ofSeconds(1));
      }
      assertThat(bench.bells()).isEqualTo(7);
      bench.press(".");
      assertThat(bench.notice()).isEqualTo("Pickle the wire: quiet.");
      bench.pass(Duration.ofMinutes(5));
      assertThat(bench.bells()).isEqualTo(7);
    }

    @Test
    void ring_on_when_the_clock_was_set_back() {
      bench.goTo("pickle-wire").press("w").pass(Duration.ofHours(3));
      int bells = bench.bells();
      bench.setClock(Duration.ofHours(-2));
      bench.pass(Duration.ofSeconds(1)).pass(Duration.ofSeconds(10));
      assertThat(bench.bells()).isGreaterThan(bells);
    }

    @Test
    void ring_in_a_book_that_is_opened_again() {
      bench.goTo("pickle-wire").press("w");
      bench.take(
          new Message.JobOpened(
              "job", "bench", bench.entries(), false, List.of(), Map.of(), List.of()));
      bench.pass(Duration.ofMinutes(9));
      assertThat(bench.bells()).isEqualTo(1);
    }
  }

  @Nested
  class BooksToLookAtOnly {
    @Test
    void nothing_is_entered_and_a_sentence_says_why() {
      Bencher looking = Bencher.lookingOnly();
      int before = looking.entries().size();
      looking.press("enter", "space", "space", "u");
      assertThat(looking.entries()).hasSize(before);
      assertThat(looking.notice()).contains("look");
    }
  }

  @Test
  void a_closed_job_is_worked_on_only_when_it_was_opened_again() {
    bench.goTo("cut-blanks").press("esc", "i", "c", "ctrl-k", "ctrl-k", "esc", "b");
    int before = bench.entries().size();
    bench.press("space", "space", "page-down");
    assertThat(bench.entries()).hasSize(before);
    assertThat(bench.notice()).startsWith("This job is closed.");
    bench.press("esc", "i", "g", "esc", "b");
    assertThat(BenchAnswers.away(bench.model())).isFalse();
  }

  @Test
  void a_job_whose_routine_is_gone_says_so() {
    Bencher lost =
        Bencher.with(
            new Fact.JobOpened("a", "no-such-routine"), new Fact.PlanSet(Map.of("wire", "0.9 mm")));
    lost.press("enter");
    assertThat(lost.notice()).contains("routine of this job is not among the files");
  }

  @Test
  void keys_can_be_changed_by_the_act_and_the_old_ones_do_it_no_more() {
    KeyMap own = new KeyMap(Map.of("redo", List.of("f"), "cut-one", List.of("+", "page-down")));
    Bencher left = Bencher.withTheDemo(new Settings(UnitStyle.METRIC, true, own));
    left.press("enter").goTo("cut-blanks").press("+", "space");
    assertThat(left.pile("link").alive()).isEqualTo(1);
    left.press("page-down");
    assertThat(left.pile("link").alive()).isEqualTo(2);
  }

  @Test
  void a_sample_link_that_is_chosen_twice_is_one_link() {
    Fact piece =
        new Fact.TestPieceTried(
            1,
            40,
            Map.of(),
            java.util.OptionalDouble.of(15),
            java.util.OptionalDouble.of(5.5),
            java.util.OptionalDouble.empty(),
            List.of("right"),
            "");
    Bencher sample = Bencher.withTheDemo();
    sample.take(
        new Message.Kept(List.of(new linkwright.job.Entry(99, sample.now(), "bench", piece))));
    sample.press("t", "s", "s");
    assertThat(sample.entered(Fact.SampleChosen.class))
        .contains(new Fact.SampleChosen(new EntryId("bench", 99), true));
    assertThat(sample.pile("link").alive()).isEqualTo(1);
  }
}
