package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.job.JobState;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What fails, is lost, is taken up again or was counted by mistake. */
class BenchRedoTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  @Nested
  class Redo {
    @Test
    void it_asks_the_reason_and_shows_its_remedy_until_the_next_piece() {
      bench.toSolder(4).press("r");
      assertThat(((BenchHeld) bench.model().held()).ask()).isInstanceOf(BenchAsk.Why.class);
      bench.press("1");
      assertThat(((BenchHeld) bench.model().held()).remedy())
          .isEqualTo(
              bench.at().step().wrong().stream()
                  .filter(r -> !r.backTo().equals(Stage.NONE))
                  .findFirst());
      assertThat(bench.at().redo()).isEqualTo(1);
      bench.press("space");
      assertThat(((BenchHeld) bench.model().held()).remedy()).isEmpty();
    }

    @Test
    void a_joint_that_fails_its_check_goes_back_to_be_soldered() {
      bench.toSolder(4).press("a");
      bench.goTo("pickle-links").together();
      bench.goTo("check-links").type("3").press("r", "1");
      assertThat(bench.pile("link").redoAt(Stage.SOLDERED)).isEqualTo(3);
      assertThat(bench.at().waiting()).isEqualTo(1);
    }

    @Test
    void a_piece_that_was_done_again_can_fail_again_and_is_still_one_piece() {
      bench.toSolder(2).press("r", "1").press("space");
      assertThat(bench.at().fromRedo()).isTrue();
      bench.press("r", "1", "r", "2");
      assertThat(bench.pile("link").alive()).isEqualTo(2);
      assertThat(bench.at().redo()).isEqualTo(1);
      assertThat(bench.pile("link").sentBack()).isEqualTo(3);
    }

    @Test
    void another_key_than_a_number_counts_nothing_and_none_of_them_leaves_the_question() {
      bench.toSolder(2).press("r", "x");
      assertThat(bench.notice()).startsWith("Press the number of the reason");
      bench.press("space");
      assertThat(bench.notice()).isEqualTo("Nothing was counted.");
      assertThat(bench.pile("link").sentBack()).isZero();
    }

    @Test
    void more_than_are_here_cannot_fail() {
      bench.toSolder(2).type("3").press("r");
      assertThat(bench.notice()).isEqualTo("Only 2 are here; 3 cannot fail.");
      assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
    }

    @Test
    void scrapped_pieces_are_lost_and_more_are_wanted() {
      bench.toSolder(bench.job().standing().left().get(PieceKind.LINK).toCut().orElseThrow());
      int before = bench.job().standing().left().get(PieceKind.LINK).toCut().orElseThrow();
      bench.type("4").press("s", "1");
      assertThat(bench.pile("link").scrapped()).isEqualTo(4);
      assertThat(bench.job().standing().left().get(PieceKind.LINK).toCut().orElseThrow())
          .isGreaterThanOrEqualTo(before + 4);
    }
  }

  @Nested
  class Taking {
    @Test
    void takes_from_the_redo_pile_and_back_from_the_new_ones() {
      bench.toSolder(4).press("r", "1");
      assertThat(bench.at().fromRedo()).as("a new one is in hand").isFalse();
      bench.press("x");
      assertThat(bench.at().fromRedo()).isTrue();
      bench.press("x");
      assertThat(bench.at().fromRedo()).isFalse();
      bench.press("x", "space");
      assertThat(bench.at().redo()).isZero();
      assertThat(bench.at().waiting()).isEqualTo(3);
    }

    @Test
    void with_no_redo_pile_here_it_says_so() {
      bench.toSolder(2).press("x");
      assertThat(bench.notice()).isEqualTo("Nothing is to be redone.");
    }
  }

  @Nested
  class Undo {
    @Test
    void strikes_all_that_one_key_entered() {
      bench.toSolder(3).press("a");
      bench.goTo("pickle-links").type("1").press("r", "1");
      JobState before = bench.state();
      bench.together();
      assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(3);
      bench.press("u");
      assertThat(bench.state().piles()).isEqualTo(before.piles());
      assertThat(bench.notice()).startsWith("Undone: ");
    }

    @Test
    void goes_back_act_by_act_and_ends_with_a_sentence() {
      bench.toSolder(2);
      bench.press(30, "u");
      assertThat(bench.pile("link").alive()).isZero();
      assertThat(bench.notice()).startsWith("Nothing of this sitting to undo here.");
      assertThat(bench.entries()).as("nothing is erased").hasSizeGreaterThan(20);
    }
  }
}
