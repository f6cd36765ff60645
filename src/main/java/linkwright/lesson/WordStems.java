package linkwright.lesson;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The words of texts without their endings, each text taken apart once. */
final class WordStems {
  private static final int LONGEST = 5;
  private static final int SHORTEST_WORD = 3;

  /** Words that stand in any sentence: two texts that have them in common say nothing alike. */
  private static final Set<String> SMALL =
      Set.of(
          "the", "and", "not", "for", "you", "has", "was", "its", "are", "but", "all", "any", "one",
          "own", "how", "who", "her", "she", "may", "can", "yet", "too", "out", "off");

  private final Map<String, Set<String>> known = new HashMap<>();

  /** The stems of a text; words too short to mean much are left out. */
  Set<String> of(String text) {
    return known.computeIfAbsent(text, WordStems::taken);
  }

  /** The stems of a text that is asked for once. */
  static Set<String> taken(String text) {
    Set<String> stems = new HashSet<>();
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || !Character.isLetter(text.charAt(i))) {
        if (i - from >= SHORTEST_WORD) {
          String stem = text.substring(from, Math.min(i, from + LONGEST)).toLowerCase(Locale.ROOT);
          if (!SMALL.contains(stem)) {
            stems.add(stem);
          }
        }
        from = i + 1;
      }
    }
    return stems;
  }

  /** How many two have in common. */
  static int shared(Set<String> one, Set<String> other) {
    int shared = 0;
    for (String stem : one) {
      shared += other.contains(stem) ? 1 : 0;
    }
    return shared;
  }
}
