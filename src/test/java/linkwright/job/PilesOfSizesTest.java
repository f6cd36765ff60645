package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** Links of several sizes, what was said of redo piles, and where piles lie. */
class PilesOfSizesTest {
  private static final Piles BEFORE =
      Piles.of(
          Map.of(
              PieceKind.LINK, Stage.all(List.of("cut", "formed", "soldered")),
              PieceKind.RING, Stage.all(List.of("cut", "joined"))));

  private static Piles after(Piles from, Fact... facts) {
    Piles piles = from;
    for (Fact fact : facts) {
      piles = piles.after(fact);
    }
    return piles;
  }

  private static Fact cut(PieceKind piece, int count, String size) {
    return new Fact.WireCut(piece, count, 38, size);
  }

  private static Fact formed(int count, Map<String, Integer> sizes) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, count), Stage.FORMED, false, new StepId("form"), sizes);
  }

  private static Fact failed(int count, Stage to, Again again, String size) {
    return new Fact.PiecesSentBack(
        PieceKind.LINK, count, Stage.SOLDERED, to, false, "gap", again, size);
  }

  private static int toForm(Piles piles, String size) {
    return piles.of(PieceKind.LINK, size).waitingFor(Stage.FORMED);
  }

  @Test
  void as_long_as_no_size_is_said_all_links_are_alike() {
    Piles piles = after(BEFORE, cut(PieceKind.LINK, 5, ""));
    assertThat(piles.sizes().piles()).isEmpty();
    assertThat(toForm(piles, "long")).isEqualTo(5);
    assertThat(piles.lastSize()).isEmpty();
  }

  @Test
  void each_size_has_a_pile_and_all_of_them_are_the_sum() {
    Piles piles =
        after(BEFORE, cut(PieceKind.LINK, 5, ""), cut(PieceKind.LINK, 3, "long"))
            .after(formed(2, Map.of("long", 2)));
    assertThat(toForm(piles, "long")).isEqualTo(1);
    assertThat(toForm(piles, LinkSizes.UNSAID)).isEqualTo(5);
    assertThat(piles.of(PieceKind.LINK).standing())
        .isEqualTo(Map.of(Stage.CUT, 6, Stage.FORMED, 2));
  }

  @Test
  void the_size_worked_at_last_is_known_by_stage_where_it_was_one() {
    Piles one =
        after(BEFORE, cut(PieceKind.LINK, 5, "round"), cut(PieceKind.LINK, 3, "long"))
            .after(formed(2, Map.of("round", 2)));
    assertThat(one.lastSize()).isEqualTo(Map.of(Stage.CUT, "long", Stage.FORMED, "round"));
    Piles two = one.after(formed(4, Map.of("long", 2, "round", 2)));
    assertThat(two.lastSize()).isEqualTo(one.lastSize());
    Piles taken =
        two.after(new Fact.PiecesTaken(Map.of(PieceKind.LINK, 1), Stage.SOLDERED, false, "round"));
    assertThat(taken.lastSize()).containsEntry(Stage.SOLDERED, "round");
  }

  @Test
  void rings_and_links_that_the_routine_does_not_know_have_no_sizes() {
    assertThat(after(BEFORE, cut(PieceKind.RING, 5, "long")).sizes()).isEqualTo(LinkSizes.NONE);
    assertThat(after(BEFORE, cut(PieceKind.RING, 5, "long")).of(PieceKind.RING).alive())
        .isEqualTo(5);
    assertThat(after(Piles.NONE, cut(PieceKind.LINK, 5, "long")).sizes()).isEqualTo(LinkSizes.NONE);
  }

  @Test
  void what_fails_says_when_it_is_done_again_at_the_stage_it_goes_to() {
    Piles formed = after(BEFORE, cut(PieceKind.LINK, 5, "")).after(formed(5, Map.of()));
    Piles known = formed.after(failed(2, Stage.FORMED, Again.NOW, ""));
    assertThat(known.of(PieceKind.LINK).again()).isEqualTo(Map.of(Stage.FORMED, Again.NOW));
    Piles none = formed.after(failed(2, Stage.PLANISHED, Again.NOW, ""));
    assertThat(none.of(PieceKind.LINK).again()).isEqualTo(Map.of(Stage.SOLDERED, Again.NOW));
  }

  @Test
  void a_later_word_on_a_redo_pile_is_of_every_size() {
    Piles failed =
        after(BEFORE, cut(PieceKind.LINK, 2, "round"), cut(PieceKind.LINK, 2, "long"))
            .after(formed(4, Map.of("round", 2, "long", 2)))
            .after(failed(1, Stage.SOLDERED, Again.NOT_SAID, "long"))
            .after(failed(2, Stage.SOLDERED, Again.NOT_SAID, "round"));
    Piles said =
        failed.after(new BenchFact.RedoPlanned(PieceKind.LINK, Stage.SOLDERED, Again.NEXT_HEAT));
    for (String size : List.of("long", "round")) {
      assertThat(said.of(PieceKind.LINK, size).again(Stage.SOLDERED))
          .as(size)
          .isEqualTo(Again.NEXT_HEAT);
    }
    assertThat(said.of(PieceKind.LINK).again(Stage.SOLDERED)).isEqualTo(Again.NEXT_HEAT);
    assertThat(said.of(PieceKind.LINK).redoAt(Stage.SOLDERED)).isEqualTo(3);
  }

  @Test
  void a_word_on_the_redo_pile_of_links_that_are_alike() {
    Piles said =
        after(BEFORE, cut(PieceKind.LINK, 5, ""))
            .after(formed(5, Map.of()))
            .after(failed(2, Stage.SOLDERED, Again.NOW, ""))
            .after(new BenchFact.RedoPlanned(PieceKind.LINK, Stage.SOLDERED, Again.SPARES));
    assertThat(said.of(PieceKind.LINK).again(Stage.SOLDERED)).isEqualTo(Again.SPARES);
    assertThat(said.sizes()).isEqualTo(LinkSizes.NONE);
  }

  @Test
  void a_pile_lies_where_she_put_it_last_and_no_other_lies_there() {
    PileSpot spot = new PileSpot(PieceKind.LINK, Stage.FORMED, false, "");
    Piles placed =
        after(
            BEFORE,
            new BenchFact.PilePlaced(PieceKind.LINK, Stage.FORMED, false, "blue tin", ""),
            new BenchFact.PilePlaced(PieceKind.LINK, Stage.FORMED, true, "on the block", ""),
            new BenchFact.PilePlaced(PieceKind.LINK, Stage.FORMED, false, "left drawer", ""));
    assertThat(placed.lies(spot)).isEqualTo("left drawer");
    assertThat(placed.lies(new PileSpot(PieceKind.LINK, Stage.FORMED, true, "")))
        .isEqualTo("on the block");
    assertThat(placed.lies(new PileSpot(PieceKind.RING, Stage.FORMED, false, ""))).isEmpty();
  }
}
