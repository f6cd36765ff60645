package linkwright.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.quantity.UnitStyle;
import linkwright.routine.StepId;

/**
 * In which order three steps of a routine are done, drawn anew each time. It is asked in place of
 * the first step, for that is nearly always the bench made ready.
 *
 * @param titles of the steps after the first, each once, in their order; three at least
 */
record OrderItem(String id, StepId step, String asks, List<String> titles, String after)
    implements Item {
  static final int ASKED = 3;

  /** What lies further apart tells its order by itself. */
  private static final int NEAR = 6;

  private static final List<List<Integer>> OTHERS =
      List.of(
          List.of(0, 2, 1), List.of(1, 0, 2), List.of(1, 2, 0), List.of(2, 0, 1), List.of(2, 1, 0));

  OrderItem {
    titles = List.copyOf(titles);
  }

  @Override
  public Topic topic() {
    return Topic.NEXT;
  }

  @Override
  public Asked draw(long seed, UnitStyle units) {
    Chance chance = new Chance(seed);
    int near = Math.min(NEAR, titles.size());
    int from = chance.below(titles.size() - near + 1);
    List<Integer> places = new ArrayList<>(Stream.iterate(0, at -> at + 1).limit(near).toList());
    List<String> drawn =
        chance.shuffled(places).stream()
            .limit(ASKED)
            .sorted()
            .map(at -> titles.get(from + at))
            .toList();
    List<String> wrong =
        chance.shuffled(OTHERS).stream()
            .limit(WrongAnswers.WRONG)
            .map(order -> said(order.stream().map(drawn::get).toList()))
            .toList();
    return Asked.shuffled(asks, said(drawn), wrong, after, chance);
  }

  private static String said(List<String> order) {
    return String.join("; ", order);
  }
}
