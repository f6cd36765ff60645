package linkwright.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import linkwright.routine.Then;

/**
 * Redo, scrap or go on, worded so that no length gives the right one away: each time a seed decides
 * which of them is said at length.
 */
final class Fates {
  private static final List<Then> ALL = List.of(Then.values());
  private static final Map<Then, List<String>> WORDS = new EnumMap<>(Then.class);

  static {
    WORDS.put(
        Then.REDO,
        List.of(
            "Redo.", "Redo: it goes back a stage.", "Redo: it goes back, and is done once more."));
    WORDS.put(
        Then.SCRAP,
        List.of("Scrap.", "Scrap: it is lost, alas.", "Scrap: it is lost, and one more is made."));
    WORDS.put(
        Then.CARRY_ON,
        List.of("Go on.", "Go on: it is put right.", "Go on: put right on the spot, it stays."));
  }

  private Fates() {}

  static Asked draw(Item.FateItem item, Chance chance) {
    List<Integer> lengths = chance.shuffled(List.of(0, 1, 2));
    List<Then> order = chance.shuffled(ALL);
    List<String> answers =
        order.stream().map(then -> WORDS.get(then).get(lengths.get(ALL.indexOf(then)))).toList();
    return new Asked(item.asks(), answers, order.indexOf(item.then()), item.after());
  }
}
