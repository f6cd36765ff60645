package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;

/** When pieces of a redo pile are to be done again. */
class PileAgainTest {
  private static final List<Stage> STAGES = Stage.all(List.of("cut", "soldered", "joined"));

  /** So many cut, of which two failed at the soldering. */
  private static Pile failed(int cut) {
    return Pile.empty(STAGES).begun(cut).sentBack(Stage.SOLDERED, Stage.SOLDERED, 2, false, "gap");
  }

  @Test
  void nothing_is_said_till_it_is_said() {
    assertThat(failed(3).again(Stage.SOLDERED)).isEqualTo(Again.NOT_SAID);
    Pile said = failed(3).saidAgain(Stage.SOLDERED, Again.NEXT_HEAT);
    assertThat(said.again(Stage.SOLDERED)).isEqualTo(Again.NEXT_HEAT);
    assertThat(said.again(Stage.JOINED)).isEqualTo(Again.NOT_SAID);
    assertThat(said.redoAt(Stage.SOLDERED)).isEqualTo(2);
  }

  @Test
  void the_last_word_holds_and_saying_nothing_takes_none_back() {
    Pile said = failed(3).saidAgain(Stage.SOLDERED, Again.NEXT_HEAT);
    assertThat(said.saidAgain(Stage.SOLDERED, Again.SPARES).again(Stage.SOLDERED))
        .isEqualTo(Again.SPARES);
    assertThat(said.saidAgain(Stage.SOLDERED, Again.NOT_SAID)).isEqualTo(said);
  }

  @Test
  void of_a_pile_without_pieces_nothing_can_be_said() {
    Pile none = Pile.empty(STAGES).begun(2).saidAgain(Stage.SOLDERED, Again.NOW);
    Pile later = none.sentBack(Stage.SOLDERED, Stage.SOLDERED, 1, false, "gap");
    assertThat(later.again(Stage.SOLDERED)).isEqualTo(Again.NOT_SAID);
  }

  @Test
  void it_holds_as_long_as_the_pile_has_pieces_and_not_for_those_that_fail_later() {
    Pile said = failed(3).saidAgain(Stage.SOLDERED, Again.NOW);
    Pile oneLeft = said.moved(Stage.SOLDERED, 1, true);
    assertThat(oneLeft.again(Stage.SOLDERED)).isEqualTo(Again.NOW);
    Pile noneLeft = oneLeft.moved(Stage.SOLDERED, 1, true);
    assertThat(noneLeft.again()).isEmpty();
    assertThat(
            noneLeft
                .sentBack(Stage.SOLDERED, Stage.SOLDERED, 1, false, "gap")
                .again(Stage.SOLDERED))
        .isEqualTo(Again.NOT_SAID);
  }

  @Test
  void of_two_piles_together_both_words_hold_and_of_one_stage_the_first() {
    Pile one = failed(3).saidAgain(Stage.SOLDERED, Again.NOW);
    Pile other =
        failed(4)
            .saidAgain(Stage.SOLDERED, Again.SPARES)
            .moved(Stage.SOLDERED, 1, false)
            .sentBack(Stage.JOINED, Stage.JOINED, 1, false, "open")
            .saidAgain(Stage.JOINED, Again.NEXT_HEAT);
    Pile both = one.and(other);
    assertThat(both.again())
        .isEqualTo(Map.of(Stage.SOLDERED, Again.NOW, Stage.JOINED, Again.NEXT_HEAT));
    assertThat(both.redo()).isEqualTo(Map.of(Stage.SOLDERED, 4, Stage.JOINED, 1));
    assertThat(both.alive()).isEqualTo(7);
    assertThat(both.redoReasons()).isEqualTo(Map.of("gap", 4, "open", 1));
  }

  @Test
  void a_pile_that_knows_no_stages_takes_those_of_the_other() {
    assertThat(Pile.empty(List.of()).and(failed(3))).isEqualTo(failed(3));
    assertThat(failed(3).and(Pile.empty(List.of()))).isEqualTo(failed(3));
  }
}
