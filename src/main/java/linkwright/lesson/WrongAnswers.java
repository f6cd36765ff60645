package linkwright.lesson;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Chooses the wrong answers so that nothing but knowing tells the right one. Whoever cannot read a
 * question can still see which answer is longest, which shares words with the question and which is
 * unlike the others: for each of these signs a seed says which place the right answer is to have
 * among the four, and of many sets the one is taken that comes nearest to it.
 */
final class WrongAnswers {
  /** Words as alike as this say the same, so that both would be right. */
  private static final double SAME = 0.5;

  /**
   * Of these one is drawn: how many of the three are to be more unlike the rest than the right
   * answer is. Many share no word at all, and of a small pool the right one stays the odd one: its
   * ends are wanted less often, so that with these cases they come as often as by chance.
   */
  private static final int[] LIKENESS = {0, 1, 1, 1, 1, 2, 2, 2, 3};

  private static final int TRIED = 100;
  private static final int THIRD = 8;
  static final int WRONG = 3;

  /** A pool smaller than this puts the same answers beside the right one each time. */
  private static final int FEWEST = 18;

  private WrongAnswers() {}

  /** An answer with the words it is told by. */
  private record Read(String text, Set<String> stems, int shared) {}

  /** Three of a pool of at least three. */
  static List<String> three(String asks, String right, List<String> pool, Chance chance) {
    int[] wanted = {chance.below(4), chance.below(4), LIKENESS[chance.below(LIKENESS.length)]};
    Set<String> question = WordStems.taken(asks);
    Read own = read(question, right);
    List<Read> some =
        near(own, chance.shuffled(pool).stream().map(t -> read(question, t)).toList());
    List<Read> best = List.of();
    double least = Double.MAX_VALUE;
    for (int i = 0; i < TRIED; i++) {
      List<Read> tried = three(some, chance);
      double off = off(own, tried, wanted);
      if (off < least) {
        least = off;
        best = tried;
      }
    }
    return best.stream().map(Read::text).toList();
  }

  /**
   * Some of many: those that share most with the question and with the right answer are the ones to
   * hide it among; the rest as chance has it.
   */
  private static List<Read> near(Read own, List<Read> all) {
    Set<Read> some = new LinkedHashSet<>();
    all.stream()
        .sorted(Comparator.comparingInt(read -> -read.shared()))
        .limit(THIRD)
        .forEach(some::add);
    all.stream()
        .sorted(Comparator.comparingInt(read -> -WordStems.shared(read.stems(), own.stems())))
        .limit(THIRD / 4)
        .forEach(some::add);
    all.stream().limit(2L * THIRD).forEach(some::add);
    return List.copyOf(some);
  }

  private static Read read(Set<String> question, String text) {
    Set<String> stems = WordStems.taken(text);
    return new Read(text, stems, WordStems.shared(question, stems));
  }

  private static List<Read> three(List<Read> all, Chance chance) {
    int first = chance.below(all.size());
    int second = (first + 1 + chance.below(all.size() - 1)) % all.size();
    int third = chance.below(all.size() - 2);
    for (int taken : new int[] {Math.min(first, second), Math.max(first, second)}) {
      third += third >= taken ? 1 : 0;
    }
    return List.of(all.get(first), all.get(second), all.get(third));
  }

  private static double off(Read own, List<Read> some, int[] wanted) {
    double length = 0;
    double shared = 0;
    double alike = 0;
    int ownAlike = alike(own, some, own);
    for (Read other : some) {
      length += rank(other.text().length(), own.text().length());
      shared += rank(other.shared(), own.shared());
      alike += rank(alike(other, some, own), ownAlike);
    }
    return Math.abs(length - wanted[0])
        + Math.abs(shared - wanted[1])
        + Math.abs(alike - wanted[2]);
  }

  /** Less of something counts whole, as much half. */
  private static double rank(int other, int own) {
    return other < own ? 1 : other == own ? 0.5 : 0;
  }

  private static int alike(Read one, List<Read> some, Read own) {
    int sum = one.equals(own) ? 0 : WordStems.shared(one.stems(), own.stems());
    for (Read other : some) {
      sum += other.equals(one) ? 0 : WordStems.shared(one.stems(), other.stems());
    }
    return sum;
  }

  /** Whether at least three of the pool are as unlike all the rest as the right answer is. */
  static boolean hidesOdd(String right, List<String> pool, WordStems stems) {
    List<String> all = Stream.concat(Stream.of(right), pool.stream()).toList();
    int own = shared(right, all, stems);
    return pool.stream().filter(text -> shared(text, all, stems) <= own).count() >= WRONG;
  }

  private static int shared(String text, List<String> all, WordStems stems) {
    return all.stream()
        .filter(other -> !other.equals(text))
        .mapToInt(other -> WordStems.shared(stems.of(text), stems.of(other)))
        .sum();
  }

  /**
   * As few of the texts, from the first on, as it takes to hide the right answer; all that say
   * something other where that takes them all. The likeliest stand first.
   */
  static List<String> nearest(String asks, String right, List<String> texts, WordStems stems) {
    List<String> all = other(right, texts, stems);
    for (int many = FEWEST; many < all.size(); many++) {
      List<String> some = all.subList(0, many);
      if (hides(asks, right, some, stems) && hidesOdd(right, some, stems)) {
        return List.copyOf(some);
      }
    }
    return all;
  }

  /** The wrong answers that say something other than the right one. */
  static List<String> other(String right, List<String> pool, WordStems stems) {
    Set<String> own = stems.of(right);
    return pool.stream()
        .distinct()
        .filter(text -> !text.isBlank() && !text.equals(right))
        .filter(
            text ->
                WordStems.shared(own, stems.of(text))
                    < SAME * Math.min(own.size(), stems.of(text).size()))
        .toList();
  }

  /**
   * Whether the pool has what it takes to hide the right answer: some that are longer and some that
   * are shorter, and as many with as many words of the question.
   */
  static boolean hides(String asks, String right, List<String> pool, WordStems stems) {
    Set<String> question = stems.of(asks);
    int own = WordStems.shared(question, stems.of(right));
    long longer = pool.stream().filter(text -> text.length() > right.length()).count();
    long shorter = pool.stream().filter(text -> text.length() < right.length()).count();
    long sharing =
        pool.stream().filter(text -> WordStems.shared(question, stems.of(text)) >= own).count();
    return pool.size() >= WRONG
        && longer >= WRONG
        && shorter >= WRONG
        && (own == 0 || sharing >= WRONG);
  }
}
