package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;

class LinkSizesTest {
  private static final List<Stage> STAGES = Stage.all(List.of("cut", "formed", "finished"));
  private static final Stage CUT = STAGES.get(0);

  /** Pieces that are cut wait for the forming. */
  private static final Stage FORMED = STAGES.get(1);

  private static Pile pile(int cut) {
    return Pile.empty(STAGES).placed(CUT, cut);
  }

  private static LinkSizes sizes(int unsaid, int longs) {
    return LinkSizes.NONE.with(LinkSizes.UNSAID, pile(unsaid)).with("long", pile(longs));
  }

  private static List<Integer> there(LinkSizes sizes) {
    return List.of(sizes.of("").there(FORMED, false), sizes.of("long").there(FORMED, false));
  }

  private static LinkSizes gone(LinkSizes from, String size, int count) {
    return from.gone(
        Map.of(size, count), FORMED, false, (pile, going) -> pile.taken(FORMED, going, false));
  }

  @Test
  void what_no_size_was_said_of_is_of_none_and_rings_have_none() {
    assertThat(LinkSizes.of(PieceKind.LINK, 5, Map.of("long", 2)))
        .isEqualTo(Map.of("long", 2, LinkSizes.UNSAID, 3));
    assertThat(LinkSizes.of(PieceKind.LINK, 5, Map.of("long", 5))).isEqualTo(Map.of("long", 5));
    assertThat(LinkSizes.of(PieceKind.LINK, 3, Map.of("long", 7))).isEqualTo(Map.of("long", 3));
    assertThat(LinkSizes.of(PieceKind.RING, 5, Map.of("long", 2)))
        .isEqualTo(Map.of(LinkSizes.UNSAID, 5));
    assertThat(LinkSizes.of(PieceKind.LINK, 0, Map.of())).isEmpty();
  }

  @Test
  void piles_of_sizes_begin_with_the_first_size_that_is_said() {
    assertThat(LinkSizes.NONE.begun(pile(4), Map.of(LinkSizes.UNSAID, 4)))
        .isEqualTo(LinkSizes.NONE);
    LinkSizes begun = LinkSizes.NONE.begun(pile(4), Map.of("long", 1));
    assertThat(there(begun)).containsExactly(4, 0);
    assertThat(begun.begun(pile(9), Map.of("long", 1))).isEqualTo(begun);
  }

  /** Those that lack are of the unsaid ones, as far as there are any. */
  @Test
  void a_size_that_goes_takes_its_own_first() {
    assertThat(there(gone(sizes(4, 3), "long", 2))).containsExactly(4, 1);
    assertThat(there(gone(sizes(4, 3), "long", 3))).containsExactly(4, 0);
    assertThat(there(gone(sizes(4, 1), "long", 3))).containsExactly(2, 0);
  }

  @Test
  void what_goes_without_a_size_takes_the_unsaid_ones_then_any() {
    assertThat(there(gone(sizes(4, 3), LinkSizes.UNSAID, 3))).containsExactly(1, 3);
    assertThat(there(gone(sizes(4, 3), LinkSizes.UNSAID, 6))).containsExactly(0, 1);
  }

  @Test
  void all_of_them_are_the_sum_and_some_can_be_left_out() {
    assertThat(sizes(4, 3).all().alive()).isEqualTo(7);
    assertThat(sizes(4, 3).without(List.of("long")).orElseThrow().alive()).isEqualTo(4);
    assertThat(sizes(4, 3).without(List.of("long", LinkSizes.UNSAID))).isEmpty();
    assertThat(sizes(4, 3).of("round")).isEqualTo(Pile.empty(STAGES));
    assertThat(there(sizes(4, 3).added(Map.of("long", 2), (pile, more) -> pile.placed(CUT, more))))
        .containsExactly(4, 5);
  }
}
