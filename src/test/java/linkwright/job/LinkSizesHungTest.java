package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;

/** Of which sizes the links are that hang in a trial length, and those in a wait. */
class LinkSizesHungTest {
  private static final String ANY = LinkSizes.UNSAID;
  private static final Pile EMPTY =
      Pile.empty(Stage.all(List.of("cut", "formed", "joined", "finished")));

  private static LinkSizes formed(int unsaid, int longs) {
    return LinkSizes.NONE
        .with(ANY, EMPTY.placed(Stage.FORMED, unsaid))
        .with("long", EMPTY.placed(Stage.FORMED, longs));
  }

  /** Formed and joined ones of a size: "1, 3". */
  private static String stand(LinkSizes sizes, String size) {
    Map<Stage, Integer> standing = sizes.of(size).standing();
    return standing.getOrDefault(Stage.FORMED, 0) + ", " + standing.getOrDefault(Stage.JOINED, 0);
  }

  private static void stand(LinkSizes sizes, String unsaid, String longs) {
    assertThat(stand(sizes, ANY)).as("no size said").isEqualTo(unsaid);
    assertThat(stand(sizes, "long")).as("long").isEqualTo(longs);
  }

  @Test
  void those_of_a_said_size_are_of_it_and_the_rest_of_those_of_none() {
    stand(formed(4, 3).atLeast(Stage.JOINED, Map.of("long", 2, ANY, 3)), "1, 3", "1, 2");
  }

  @Test
  void where_too_few_are_of_no_size_the_others_are_of_any() {
    stand(formed(1, 3).atLeast(Stage.JOINED, Map.of(ANY, 3)), "0, 1", "1, 2");
  }

  @Test
  void where_there_are_too_few_of_all_some_were_made_uncounted() {
    stand(formed(1, 1).atLeast(Stage.JOINED, Map.of(ANY, 5)), "0, 4", "0, 1");
  }

  @Test
  void those_that_hang_already_hang_once() {
    LinkSizes one = LinkSizes.NONE.with(ANY, EMPTY.placed(Stage.FORMED, 1).placed(Stage.JOINED, 1));
    LinkSizes both = one.with("long", EMPTY.placed(Stage.FORMED, 2));
    stand(both.atLeast(Stage.JOINED, Map.of(ANY, 3)), "0, 2", "1, 1");
    stand(both.atLeast(Stage.JOINED, Map.of(ANY, 1)), "1, 1", "2, 0");
  }

  @Test
  void what_is_to_be_done_again_does_not_hang() {
    Pile again =
        EMPTY.placed(Stage.FORMED, 3).sentBack(Stage.JOINED, Stage.FORMED, 1, false, "open");
    LinkSizes sizes = LinkSizes.NONE.with(ANY, again);
    LinkSizes hung =
        sizes.with("long", EMPTY.placed(Stage.FORMED, 2)).atLeast(Stage.JOINED, Map.of(ANY, 3));
    stand(hung, "0, 2", "1, 1");
    assertThat(hung.of(ANY).redoAt(Stage.FORMED)).isEqualTo(1);
  }

  @Test
  void what_is_done_to_each_is_done_to_every_size_and_keeps_their_order() {
    LinkSizes each = formed(4, 3).each(pile -> pile.placed(Stage.JOINED, 1));
    stand(each, "4, 1", "3, 1");
    assertThat(each.piles().keySet()).containsExactly(ANY, "long");
  }

  @Test
  void sizes_of_what_goes_into_a_wait_are_told_apart_by_whether_it_is_done_again() {
    Map<OnWay, Integer> ways = new LinkedHashMap<>();
    ways.put(new OnWay(PieceKind.LINK, Stage.FORMED, false, "long"), 4);
    ways.put(new OnWay(PieceKind.LINK, Stage.FORMED, false, ""), 9);
    ways.put(new OnWay(PieceKind.LINK, Stage.JOINED, false, "long"), 1);
    ways.put(new OnWay(PieceKind.LINK, Stage.FORMED, true, "round"), 2);
    assertThat(LinkSizes.of(ways, false)).isEqualTo(Map.of("long", 5));
    assertThat(LinkSizes.of(ways, true)).isEqualTo(Map.of("round", 2));
  }
}
