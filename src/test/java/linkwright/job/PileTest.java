package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PileTest {
  private static final List<Stage> STAGES =
      Stage.all(List.of("cut", "formed", "soldered", "checked"));

  private static Pile of(int cut) {
    return Pile.empty(STAGES).begun(cut);
  }

  @Test
  void of_a_kind_that_the_routine_does_not_know_holds_nothing() {
    Pile none = Pile.empty(List.of());
    assertThat(none.begun(3)).isEqualTo(none);
    assertThat(none.finished()).isZero();
    assertThat(none.begins(Stage.CUT)).isFalse();
    assertThat(none.atOrPast(Stage.CUT)).isZero();
  }

  @Test
  void pieces_begin_at_the_first_stage_only() {
    assertThat(of(2).begins(Stage.CUT)).isTrue();
    assertThat(of(2).begins(new Stage("formed"))).isFalse();
  }

  @Nested
  class Counting {
    private final Pile pile =
        of(6)
            .moved(new Stage("formed"), 5, false)
            .moved(Stage.SOLDERED, 4, false)
            .moved(Stage.CHECKED, 2, false)
            .sentBack(Stage.CHECKED, Stage.SOLDERED, 1, false, "gap")
            .scrapped(new Stage("formed"), 1, false, "nicked");

    @Test
    void what_stands_at_a_stage_or_beyond() {
      assertThat(pile.atOrPast(Stage.CUT)).isEqualTo(4);
      assertThat(pile.atOrPast(new Stage("formed"))).isEqualTo(4);
      assertThat(pile.atOrPast(Stage.SOLDERED)).isEqualTo(3);
      assertThat(pile.atOrPast(Stage.CHECKED)).isEqualTo(2);
      assertThat(pile.atOrPast(Stage.PLANISHED)).isZero();
    }

    @Test
    void what_waits_and_what_is_to_be_done_again_are_kept_apart() {
      assertThat(pile.waitingFor(Stage.CUT)).isZero();
      assertThat(pile.waitingFor(new Stage("formed"))).isZero();
      assertThat(pile.waitingFor(Stage.SOLDERED)).isEqualTo(1);
      assertThat(pile.waitingFor(Stage.CHECKED)).isEqualTo(1);
      assertThat(pile.waitingFor(Stage.PLANISHED)).isZero();
      assertThat(pile.redoAt(Stage.SOLDERED)).isEqualTo(1);
      assertThat(pile.inRedo()).isEqualTo(1);
    }

    @Test
    void the_whole_of_it() {
      assertThat(pile.alive()).isEqualTo(5);
      assertThat(pile.scrapped()).isEqualTo(1);
      assertThat(pile.sentBack()).isEqualTo(1);
      assertThat(pile.finished()).isEqualTo(2);
      assertThat(pile.through())
          .isEqualTo(
              Map.of(Stage.CUT, 6, new Stage("formed"), 5, Stage.SOLDERED, 4, Stage.CHECKED, 2));
      assertThat(pile.redoReasons()).isEqualTo(Map.of("gap", 1));
      assertThat(pile.scrapReasons()).isEqualTo(Map.of("nicked", 1));
    }
  }

  @Nested
  class NeverMoreThanThereAre {
    @Test
    void come_through_or_go_back_or_to_scrap() {
      assertThat(of(2).moved(new Stage("formed"), 5, false).through())
          .containsEntry(new Stage("formed"), 2);
      assertThat(
              of(2)
                  .sentBack(new Stage("formed"), new Stage("formed"), 5, false, "bent")
                  .redoAt(new Stage("formed")))
          .isEqualTo(2);
      assertThat(of(2).scrapped(new Stage("formed"), 5, false, "nicked").scrapped()).isEqualTo(2);
    }

    @Test
    void come_out_of_the_redo_pile() {
      Pile redo =
          of(3)
              .moved(new Stage("formed"), 3, false)
              .sentBack(Stage.SOLDERED, Stage.SOLDERED, 2, false, "gap");
      Pile again = redo.moved(Stage.SOLDERED, 9, true);
      assertThat(again.redoAt(Stage.SOLDERED)).isZero();
      assertThat(again.waitingFor(Stage.CHECKED)).isEqualTo(2);
      assertThat(again.waitingFor(Stage.SOLDERED)).isEqualTo(1);
      assertThat(redo.scrapped(Stage.SOLDERED, 9, true, "melted").alive()).isEqualTo(1);
    }
  }

  @Test
  void sent_back_to_a_stage_that_is_none_they_are_done_again_where_they_failed() {
    Pile pile = of(1).moved(new Stage("formed"), 1, false);
    assertThat(
            pile.sentBack(Stage.SOLDERED, Stage.PLANISHED, 1, false, "dirty")
                .redoAt(Stage.SOLDERED))
        .isEqualTo(1);
    assertThat(
            pile.sentBack(Stage.SOLDERED, new Stage("formed"), 1, false, "dirty")
                .redoAt(new Stage("formed")))
        .isEqualTo(1);
  }
}
