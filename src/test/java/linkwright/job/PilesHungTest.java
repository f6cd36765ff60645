package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** Links and rings of a trial length that is followed: part of the chain, but for its finish. */
class PilesHungTest {
  private static final Stage FINISHED = new Stage("finished");
  private static final Stage SOLDERED = new Stage("soldered");
  private static final Piles BEFORE =
      Piles.of(
          Map.of(
              PieceKind.LINK, Stage.all(List.of("cut", "soldered", "joined", "finished")),
              PieceKind.RING, Stage.all(List.of("cut", "joined", "finished"))));

  private static Fact.TrialMeasured trial(int links, int rings) {
    return new Fact.TrialMeasured(links, rings, 3, OptionalDouble.empty(), 52.3, 0, "");
  }

  private static Fact through(PieceKind piece, int count, Stage stage) {
    return new Fact.PiecesThrough(Map.of(piece, count), stage, false, new StepId("join"));
  }

  private static int rings(Piles piles) {
    return piles.of(PieceKind.RING).waitingFor(FINISHED);
  }

  /** 4 rings hung, and 2 were joined after that. */
  private static Piles sixRings() {
    return BEFORE
        .hung(trial(3, 4), Map.of())
        .after(new Fact.WireCut(PieceKind.RING, 2, 11))
        .after(through(PieceKind.RING, 2, Stage.JOINED));
  }

  @Test
  void they_wait_for_what_is_done_to_the_whole_chain() {
    Piles hung = BEFORE.hung(trial(3, 4), Map.of());
    assertThat(hung.of(PieceKind.LINK).standing()).isEqualTo(Map.of(Stage.JOINED, 3));
    assertThat(hung.of(PieceKind.RING).standing()).isEqualTo(Map.of(Stage.JOINED, 4));
  }

  @Test
  void they_are_of_those_that_were_cut() {
    Piles cut = BEFORE.after(new Fact.WireCut(PieceKind.LINK, 5, 38));
    assertThat(cut.hung(trial(3, 0), Map.of()).of(PieceKind.LINK).standing())
        .isEqualTo(Map.of(Stage.CUT, 2, Stage.JOINED, 3));
  }

  @Test
  void where_there_were_none_of_a_kind_its_pile_stays() {
    Piles hung = BEFORE.hung(trial(3, 0), Map.of());
    assertThat(hung.of(PieceKind.RING)).isEqualTo(BEFORE.of(PieceKind.RING));
    assertThat(BEFORE.hung(trial(0, 0), Map.of())).isEqualTo(BEFORE);
  }

  @Test
  void pieces_of_two_stages_hang_at_the_first_and_of_one_nowhere() {
    Piles few =
        Piles.of(
            Map.of(
                PieceKind.LINK, Stage.all(List.of("joined")),
                PieceKind.RING, Stage.all(List.of("joined", "finished"))));
    Piles hung = few.hung(trial(3, 4), Map.of());
    assertThat(hung.of(PieceKind.LINK).alive()).isZero();
    assertThat(rings(hung)).isEqualTo(4);
    assertThat(rings(hung.ringsSince(4, true))).isZero();
  }

  @Test
  void the_sizes_of_its_links_are_kept_apart() {
    Piles hung = BEFORE.hung(trial(5, 4), Map.of("long", 2));
    assertThat(hung.of(PieceKind.LINK, "long").standing()).isEqualTo(Map.of(Stage.JOINED, 2));
    assertThat(hung.of(PieceKind.LINK, LinkSizes.UNSAID).standing())
        .isEqualTo(Map.of(Stage.JOINED, 3));
    assertThat(hung.of(PieceKind.LINK).standing()).isEqualTo(Map.of(Stage.JOINED, 5));
    assertThat(hung.of(PieceKind.RING, "long").standing()).isEqualTo(Map.of(Stage.JOINED, 4));
  }

  @Test
  void rings_that_hung_go_aside_when_others_are_wished_and_come_back() {
    Piles others = sixRings().ringsSince(4, true);
    assertThat(rings(others)).isEqualTo(2);
    assertThat(others.ringsAside()).isEqualTo(4);
    assertThat(others.ringsSince(4, true)).as("they are aside already").isEqualTo(others);
    Piles back = others.ringsSince(4, false);
    assertThat(back).isEqualTo(sixRings());
    assertThat(back.ringsSince(4, false)).isEqualTo(back);
  }

  @Test
  void links_that_hung_on_rings_to_be_opened_wait_to_be_joined() {
    Piles others = sixRings().ringsSince(4, true);
    assertThat(others.of(PieceKind.LINK).standing()).isEqualTo(Map.of(SOLDERED, 3));
    assertThat(others.toOpen()).isEqualTo(3);
    Piles one = others.after(through(PieceKind.LINK, 1, Stage.JOINED));
    assertThat(one.toOpen()).isEqualTo(2);
    assertThat(one.ringsSince(4, false).of(PieceKind.LINK).standing())
        .as("one was joined meanwhile, two are as they hung")
        .isEqualTo(Map.of(Stage.JOINED, 3));
    assertThat(others.noneAside().of(PieceKind.LINK).standing())
        .as("another length hangs with other links")
        .isEqualTo(Map.of(SOLDERED, 3));
  }

  @Test
  void of_links_joined_since_only_those_that_hung_are_opened() {
    Piles more =
        sixRings()
            .after(new Fact.WireCut(PieceKind.LINK, 2, 38))
            .after(through(PieceKind.LINK, 2, SOLDERED))
            .after(through(PieceKind.LINK, 2, Stage.JOINED));
    assertThat(more.ringsSince(4, true).of(PieceKind.LINK).standing())
        .isEqualTo(Map.of(SOLDERED, 3, Stage.JOINED, 2));
  }

  @Test
  void each_size_that_hung_is_opened_by_itself() {
    Piles hung = BEFORE.hung(trial(5, 4), Map.of("long", 2));
    Piles others = hung.ringsSince(4, true);
    assertThat(others.of(PieceKind.LINK, "long").standing()).isEqualTo(Map.of(SOLDERED, 2));
    assertThat(others.of(PieceKind.LINK, LinkSizes.UNSAID).standing())
        .isEqualTo(Map.of(SOLDERED, 3));
    assertThat(others.ringsSince(4, false)).isEqualTo(hung);
  }

  @Test
  void links_that_are_not_joined_by_themselves_stay_where_they_are() {
    Piles plain =
        Piles.of(
            Map.of(
                PieceKind.LINK, Stage.all(List.of("cut", "finished")),
                PieceKind.RING, Stage.all(List.of("cut", "joined", "finished"))));
    Piles hung = plain.hung(trial(3, 4), Map.of());
    assertThat(hung.ringsSince(4, true).of(PieceKind.LINK)).isEqualTo(hung.of(PieceKind.LINK));
    assertThat(hung.ringsSince(4, true).ringsSince(4, false)).isEqualTo(hung);
  }

  @Test
  void rings_that_were_finished_with_the_chain_do_not_go_aside() {
    Piles finished = sixRings().after(through(PieceKind.RING, 5, FINISHED));
    Piles others = finished.ringsSince(4, true);
    assertThat(others.ringsAside()).isEqualTo(1);
    assertThat(rings(others)).isZero();
    assertThat(others.of(PieceKind.RING).finished()).isEqualTo(5);
  }

  @Test
  void rings_of_an_earlier_trial_length_come_back_no_more() {
    Piles gone = sixRings().ringsSince(4, true).noneAside();
    assertThat(gone.ringsAside()).isZero();
    assertThat(rings(gone.ringsSince(4, false))).isEqualTo(2);
  }

  @Test
  void a_routine_without_rings_has_none_to_go_aside() {
    Piles linksOnly = Piles.of(Map.of(PieceKind.RING, Stage.all(List.of("joined"))));
    assertThat(linksOnly.ringsSince(4, true)).isEqualTo(linksOnly);
    assertThat(Piles.NONE.ringsSince(4, true)).isEqualTo(Piles.NONE);
  }
}
