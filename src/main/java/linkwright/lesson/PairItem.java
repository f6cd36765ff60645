package linkwright.lesson;

import java.util.ArrayList;
import java.util.List;
import linkwright.quantity.UnitStyle;
import linkwright.routine.StepId;

/**
 * A question of two halves, such as which solder and why: what is right and what is wrong of each
 * half make four answers, so that half a guess is no answer. A seed decides which half is said at
 * length, and no length tells the right one.
 *
 * @param first what can be said for the first half, the right one first; two at least
 * @param second the same for the second half
 */
record PairItem(
    String id,
    Topic topic,
    StepId step,
    String caution,
    String asks,
    List<Half> first,
    List<Half> second,
    String after)
    implements Item {
  /**
   * Half of an answer.
   *
   * @param briefly in few words
   * @param fully the same in more
   */
  record Half(String briefly, String fully) {
    String said(boolean full) {
      return full ? fully : briefly;
    }
  }

  PairItem {
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  @Override
  public Asked draw(long seed, UnitStyle units) {
    Chance chance = new Chance(seed);
    List<String> one = said(first, chance);
    List<String> other = said(second, chance);
    List<String> all = new ArrayList<>();
    one.forEach(half -> other.forEach(rest -> all.add(half + ": " + rest + ".")));
    return Asked.shuffled(asks, all.get(0), all.subList(1, all.size()), after, chance);
  }

  /** What is right and one that is wrong, one of them at length. */
  private static List<String> said(List<Half> halves, Chance chance) {
    boolean full = chance.below(2) == 0;
    Half wrong = halves.get(1 + chance.below(halves.size() - 1));
    return List.of(halves.get(0).said(full), wrong.said(!full));
  }
}
