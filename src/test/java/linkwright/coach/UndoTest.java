package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.kernel.Message;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Piles;
import linkwright.routine.PieceKind;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UndoTest {
  private static final Fact PIECE =
      new Fact.TestPieceTried(
          1,
          40,
          Map.of(),
          OptionalDouble.of(15),
          OptionalDouble.of(5.5),
          OptionalDouble.empty(),
          List.of("right"),
          "");

  private static final Fact HUNG =
      new Fact.TrialMeasured(3, 4, 3.2, OptionalDouble.empty(), 60, 16, "");

  private final Bencher bench = Bencher.withTheDemo();

  private void other(int number, Instant at, String device, Fact fact) {
    bench.take(new Message.Kept(List.of(new Entry(number, at, device, fact))));
  }

  @Nested
  class OutOfReach {
    @ParameterizedTest
    @ValueSource(strings = {"t", "l", "b", "w", "i", "k", "c", "m", "r"})
    void is_the_plan_from_every_place(String place) {
      bench.press(place).press(9, "u").press("esc").press(3, "u");
      assertThat(bench.state().course().wish()).isNotEmpty();
      assertThat(bench.entered(Fact.Struck.class)).isEmpty();
      assertThat(bench.notice()).startsWith("Nothing of this sitting to undo here.");
    }

    @Test
    void is_a_wait_at_the_timers_and_at_the_bench() {
      bench.press("m", "n").type("kettle").press("enter").type("8 min").press("ctrl-k");
      bench.press("u", "u", "esc", "enter").seeCautions().press(3, "u");
      assertThat(bench.state().timers().running()).hasSize(1);
    }

    @Test
    void is_the_sample_link_and_the_trial_length_that_is_followed() {
      other(90, bench.now(), "bench", PIECE);
      bench.pass(Duration.ofSeconds(5));
      other(91, bench.now(), "bench", HUNG);
      bench.press("t", "s").press(9, "u");
      assertThat(bench.state().trials().samplePiece()).contains((Fact.TestPieceTried) PIECE);
      assertThat(bench.notice()).contains("sample link, which undo does not reach");
      bench.press("esc", "l", "s").press(9, "u");
      assertThat(bench.state().trials().chosen()).contains((Fact.TrialMeasured) HUNG);
      assertThat(bench.notice()).contains("follows the last trial length");
    }

    @Test
    void is_what_was_entered_at_another_place_and_it_says_where() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space").press("esc", "t", "u");
      assertThat(bench.pile("link").alive()).isEqualTo(3);
      assertThat(bench.notice()).contains("(bench): “3 links cut");
      bench.press("esc", "u");
      assertThat(bench.pile("link").alive()).isEqualTo(3);
    }

    @Test
    void is_an_earlier_sitting_and_another_machine() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space");
      other(7, bench.now(), "study", new Fact.WireCut(PieceKind.LINK, 2, 42));
      bench.press("u");
      assertThat(bench.pile("link").alive()).as("the study's two stay").isEqualTo(2);
      bench.press("z").pass(Duration.ofMinutes(61)).press("space").seeCautions().press(5, "u");
      assertThat(bench.pile("link").alive()).isEqualTo(5);
      bench.press("y", "space", "space").seeCautions().press(5, "u");
      assertThat(bench.pile("link").alive()).isEqualTo(5);
    }

    /** What was told of one wait need not be told again, whatever was pressed in between. */
    @Test
    void is_told_of_a_wait_once_and_then_the_act_at_the_step_before_it_is_taken_back() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space");
      bench.goTo("anneal-blanks").press("space", "space", "u");
      assertThat(bench.notice()).startsWith("Undo strikes no wait.");
      bench.press("u");
      assertThat(bench.notice()).as("not at another step").startsWith("Undo strikes no wait.");
      assertThat(bench.pile("link").alive()).isEqualTo(3);
      bench.goTo("cut-blanks").press("u");
      assertThat(bench.notice()).startsWith("Undone: ");
    }

    /** Hot work stands between: the step that was done before it is not opened again. */
    @Test
    void is_the_step_before_once_a_flame_is_said_to_be_lit() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space");
      bench.goTo("anneal-blanks").press("space");
      assertThat(bench.model().hotWork().lit()).isPresent();
      bench.press("u", "u");
      assertThat(bench.notice()).startsWith("Undo strikes nothing that was said of flames.");
      assertThat(bench.entered(Fact.Struck.class)).isEmpty();
    }

    @Test
    void is_all_behind_a_caution_or_a_question() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space");
      bench.press("s", "u");
      assertThat(bench.notice()).as("it says why").startsWith("Nothing was undone: first ");
      bench.press("space").press("y", "u");
      assertThat(bench.pile("link").alive()).isEqualTo(3);
    }
  }

  @Nested
  class ComesBack {
    @Test
    void by_one_key_act_by_act() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space").type("2").press("space");
      Piles full = bench.state().piles();
      bench.press("u", "u");
      assertThat(bench.pile("link").alive()).isZero();
      assertThat(bench.notice()).contains("Undone: “3 links cut").contains("z brings it back");
      bench.press("z");
      assertThat(bench.notice()).contains("Brought back: “3 links cut");
      bench.press("z");
      assertThat(bench.state().piles()).isEqualTo(full);
      bench.press("z");
      assertThat(bench.state().piles()).isEqualTo(full);
      assertThat(bench.notice()).isEqualTo("Nothing was undone here in this sitting.");
      bench.press("u");
      assertThat(bench.pile("link").alive()).as("undone once more").isEqualTo(3);
    }

    @Test
    void not_over_what_was_entered_since() {
      bench.press("enter").goTo("cut-blanks").type("3").press("space", "u", "space", "z");
      assertThat(bench.pile("link").alive()).isEqualTo(1);
      assertThat(bench.notice()).startsWith("Something was entered here since");
    }

    @Test
    void with_the_step_that_was_open_before_it_was_done() {
      bench.press("enter").seeCautions().press("space").seeCautions();
      StepId next = bench.at().step().id();
      bench.press("u");
      assertThat(bench.at().number()).isEqualTo(1);
      assertThat(bench.state().course().stepsDone()).isEmpty();
      bench.press("z");
      assertThat(bench.at().step().id()).isEqualTo(next);
    }
  }

  @Test
  void after_a_strike_in_the_book_brings_the_row_back_and_strikes_no_other() {
    bench.press("enter").goTo("cut-blanks").type("3").press("space").type("2").press("space");
    bench.press("esc", "k", "x").type("twice").press("ctrl-k");
    assertThat(bench.pile("link").alive()).isEqualTo(3);
    bench.press("u");
    assertThat(bench.pile("link").alive()).isEqualTo(5);
    bench.press("u");
    assertThat(bench.pile("link").alive()).isEqualTo(5);
    bench.press("z");
    assertThat(bench.pile("link").alive()).as("the strike is brought back").isEqualTo(3);
  }

  @Test
  void a_strike_made_in_the_book_is_not_reached_from_the_bench() {
    bench.press("enter").goTo("cut-blanks").type("3").press("space").type("2").press("space");
    bench.press("esc", "k", "x").type("twice").press("ctrl-k").press("b", "z");
    assertThat(bench.pile("link").alive()).isEqualTo(3);
    bench.press("u");
    assertThat(bench.pile("link").alive()).as("the first three").isZero();
    assertThat(bench.entries()).extracting(Entry::id).contains(new EntryId("bench", 1));
  }
}
