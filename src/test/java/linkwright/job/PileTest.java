package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PileTest {
  private static final List<String> STAGES = List.of("cut", "formed", "soldered", "checked");

  private static Pile of(int cut) {
    return Pile.empty(STAGES).begun(cut);
  }

  @Test
  void of_a_kind_that_the_routine_does_not_know_holds_nothing() {
    Pile none = Pile.empty(List.of());
    assertThat(none.begun(3)).isEqualTo(none);
    assertThat(none.finished()).isZero();
    assertThat(none.begins("cut")).isFalse();
    assertThat(none.atOrPast("cut")).isZero();
  }

  @Test
  void pieces_begin_at_the_first_stage_only() {
    assertThat(of(2).begins("cut")).isTrue();
    assertThat(of(2).begins("formed")).isFalse();
  }

  @Nested
  class Counting {
    private final Pile pile =
        of(6)
            .moved("formed", 5, false)
            .moved("soldered", 4, false)
            .moved("checked", 2, false)
            .sentBack("checked", "soldered", 1, false, "gap")
            .scrapped("formed", 1, false, "nicked");

    @Test
    void what_stands_at_a_stage_or_beyond() {
      assertThat(pile.atOrPast("cut")).isEqualTo(4);
      assertThat(pile.atOrPast("formed")).isEqualTo(4);
      assertThat(pile.atOrPast("soldered")).isEqualTo(3);
      assertThat(pile.atOrPast("checked")).isEqualTo(2);
      assertThat(pile.atOrPast("planished")).isZero();
    }

    @Test
    void what_waits_and_what_is_to_be_done_again_are_kept_apart() {
      assertThat(pile.waitingFor("cut")).isZero();
      assertThat(pile.waitingFor("formed")).isZero();
      assertThat(pile.waitingFor("soldered")).isEqualTo(1);
      assertThat(pile.waitingFor("checked")).isEqualTo(1);
      assertThat(pile.waitingFor("planished")).isZero();
      assertThat(pile.redoAt("soldered")).isEqualTo(1);
      assertThat(pile.inRedo()).isEqualTo(1);
    }

    @Test
    void the_whole_of_it() {
      assertThat(pile.alive()).isEqualTo(5);
      assertThat(pile.scrapped()).isEqualTo(1);
      assertThat(pile.sentBack()).isEqualTo(1);
      assertThat(pile.finished()).isEqualTo(2);
      assertThat(pile.through())
          .isEqualTo(Map.of("cut", 6, "formed", 5, "soldered", 4, "checked", 2));
      assertThat(pile.redoReasons()).isEqualTo(Map.of("gap", 1));
      assertThat(pile.scrapReasons()).isEqualTo(Map.of("nicked", 1));
    }
  }

  @Nested
  class NeverMoreThanThereAre {
    @Test
    void come_through_or_go_back_or_to_scrap() {
      assertThat(of(2).moved("formed", 5, false).through()).containsEntry("formed", 2);
      assertThat(of(2).sentBack("formed", "formed", 5, false, "bent").redoAt("formed"))
          .isEqualTo(2);
      assertThat(of(2).scrapped("formed", 5, false, "nicked").scrapped()).isEqualTo(2);
    }

    @Test
    void come_out_of_the_redo_pile() {
      Pile redo = of(3).moved("formed", 3, false).sentBack("soldered", "soldered", 2, false, "gap");
      Pile again = redo.moved("soldered", 9, true);
      assertThat(again.redoAt("soldered")).isZero();
      assertThat(again.waitingFor("checked")).isEqualTo(2);
      assertThat(again.waitingFor("soldered")).isEqualTo(1);
      assertThat(redo.scrapped("soldered", 9, true, "melted").alive()).isEqualTo(1);
    }
  }

  @Test
  void sent_back_to_a_stage_that_is_none_they_are_done_again_where_they_failed() {
    Pile pile = of(1).moved("formed", 1, false);
    assertThat(pile.sentBack("soldered", "planished", 1, false, "dirty").redoAt("soldered"))
        .isEqualTo(1);
    assertThat(pile.sentBack("soldered", "formed", 1, false, "dirty").redoAt("formed"))
        .isEqualTo(1);
  }
}
