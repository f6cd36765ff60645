package linkwright.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * Chance that a seed decides alone, so that a question read from a book is drawn the same again on
 * any machine and Java. The generator is SplitMix64 (Steele, Lea, Flood 2014, doi
 * 10.1145/2660193.2660195).
 */
final class Chance {
  private static final long STEP = 0x9e3779b97f4a7c15L;

  private long state;

  Chance(long seed) {
    this.state = seed;
  }

  /** A whole number from 0 to below a bound that is 1 or more. */
  int below(int bound) {
    state += STEP;
    long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    return (int) Math.floorMod(mixed ^ (mixed >>> 31), (long) bound);
  }

  /** The same things in another order. */
  <T> List<T> shuffled(List<T> some) {
    List<T> all = new ArrayList<>(some);
    for (int i = all.size() - 1; i > 0; i--) {
      all.set(i, all.set(below(i + 1), all.get(i)));
    }
    return List.copyOf(all);
  }
}
