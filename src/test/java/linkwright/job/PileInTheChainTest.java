package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;

/** Pieces that hang in the chain, those that do not yet, and those that are spare. */
class PileInTheChainTest {
  private static final Stage FINISHED = new Stage("finished");
  private static final List<Stage> STAGES =
      Stage.all(List.of("cut", "formed", "soldered", "joined", "finished"));

  private static Pile empty() {
    return Pile.empty(STAGES);
  }

  /** 2 cut, 3 formed, 1 soldered and 1 joined: 7 in all. */
  private static Pile seven() {
    return empty()
        .placed(Stage.CUT, 2)
        .placed(Stage.FORMED, 3)
        .placed(Stage.SOLDERED, 1)
        .placed(Stage.JOINED, 1);
  }

  @Test
  void the_chain_has_enough_once_as_many_are_joined_as_are_wanted() {
    Pile pile = empty().placed(Stage.SOLDERED, 9).placed(Stage.JOINED, 3).placed(FINISHED, 2);
    assertThat(pile.chainHas(Stage.JOINED, 5)).isTrue();
    assertThat(pile.chainHas(Stage.JOINED, 6)).isFalse();
    assertThat(pile.chainHas(FINISHED, 2)).isTrue();
    assertThat(pile.chainHas(FINISHED, 3)).isFalse();
  }

  @Test
  void pieces_that_are_not_joined_yet_are_never_too_many() {
    Pile pile = empty().placed(Stage.SOLDERED, 9).placed(Stage.JOINED, 3);
    assertThat(pile.chainHas(Stage.SOLDERED, 1)).isFalse();
    assertThat(pile.chainHas(Stage.PLANISHED, 1)).isFalse();
  }

  @Test
  void of_a_chain_for_which_no_number_is_wished_none_is_spare() {
    assertThat(empty().placed(Stage.JOINED, 3).chainHas(Stage.JOINED, 0)).isFalse();
  }

  @Test
  void where_nothing_is_joined_there_is_no_one_chain() {
    Pile single = Pile.empty(Stage.all(List.of("cut", "finished"))).placed(FINISHED, 3);
    assertThat(single.chainHas(FINISHED, 3)).isFalse();
    Pile joinedAtOnce = Pile.empty(Stage.all(List.of("joined", "finished"))).placed(FINISHED, 3);
    assertThat(joinedAtOnce.chainHas(FINISHED, 3)).isTrue();
  }

  @Test
  void those_that_came_furthest_hang_first() {
    Pile hung = seven().atLeast(Stage.JOINED, 4);
    assertThat(hung.standing()).isEqualTo(Map.of(Stage.CUT, 2, Stage.FORMED, 1, Stage.JOINED, 4));
  }

  @Test
  void what_all_of_them_do_not_make_up_was_made_uncounted() {
    Pile hung = seven().atLeast(Stage.JOINED, 9);
    assertThat(hung.standing()).isEqualTo(Map.of(Stage.JOINED, 9));
    assertThat(empty().atLeast(Stage.CUT, 2).standing()).isEqualTo(Map.of(Stage.CUT, 2));
  }

  @Test
  void of_as_many_as_hang_already_nothing_moves() {
    assertThat(seven().atLeast(Stage.JOINED, 1)).isEqualTo(seven());
    assertThat(seven().atLeast(Stage.FORMED, 2)).isEqualTo(seven());
    assertThat(seven().placed(FINISHED, 2).atLeast(Stage.JOINED, 3))
        .isEqualTo(seven().placed(FINISHED, 2));
  }

  @Test
  void at_a_stage_that_the_pieces_have_not_nothing_hangs() {
    assertThat(seven().atLeast(Stage.PLANISHED, 3)).isEqualTo(seven());
  }

  @Test
  void what_is_to_be_done_again_is_not_hung() {
    Pile pile =
        empty().placed(Stage.FORMED, 3).sentBack(Stage.SOLDERED, Stage.SOLDERED, 2, false, "gap");
    Pile hung = pile.atLeast(Stage.JOINED, 2);
    assertThat(hung.redoAt(Stage.SOLDERED)).isEqualTo(2);
    assertThat(hung.standing()).isEqualTo(Map.of(Stage.JOINED, 2));
  }

  /** Of 7, one goes back to be soldered and one to be joined. */
  @Test
  void what_is_done_again_later_on_came_through_what_lies_before() {
    Pile pile =
        seven()
            .sentBack(Stage.SOLDERED, Stage.SOLDERED, 1, false, "gap")
            .sentBack(FINISHED, Stage.JOINED, 1, false, "open");
    assertThat(pile.cameThrough(Stage.CUT)).isEqualTo(7);
    assertThat(pile.cameThrough(Stage.FORMED)).as("2 formed, 1 soldered, 2 again").isEqualTo(5);
    assertThat(pile.cameThrough(Stage.SOLDERED)).as("1 soldered, 1 to join again").isEqualTo(2);
    assertThat(pile.cameThrough(Stage.JOINED)).isZero();
    assertThat(pile.cameThrough(Stage.PLANISHED)).isZero();
  }
}
