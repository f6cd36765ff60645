package linkwright.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that somebody most likely meant. */
public final class Nearest {
  /** Longer than any word that is known: comparing it would take long and find nothing. */
  private static final int LONGEST = 200;

  private Nearest() {}

  /**
   * The known word nearest to what was typed: fewest letters put in, left out, changed or swapped
   * with their neighbour, capitals aside. On a tie the longer common beginning wins, then the order
   * of the collection.
   *
   * @param typed what was typed
   * @param known the words that would have been right, the likeliest first
   * @return empty when nothing is near: more than a third of the letters differ, though one
   *     difference is always allowed in words of two letters or more
   */
  public static Optional<String> of(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    String wanted = plain(typed);
    String best = "";
    int bestDistance = Integer.MAX_VALUE;
    int bestPrefix = -1;
    for (String word : known) {
      String candidate = plain(word);
      int distance = distance(wanted, candidate);
      int prefix = commonPrefix(wanted, candidate);
      if (distance < bestDistance || (distance == bestDistance && prefix > bestPrefix)) {
        best = word;
        bestDistance = distance;
        bestPrefix = prefix;
      }
    }
    int allowed = wanted.length() < 2 ? 0 : Math.max(1, wanted.length() / 3);
    return bestDistance <= allowed ? Optional.of(best) : Optional.empty();
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  private static int commonPrefix(String a, String b) {
    int length = 0;
    while (length < Math.min(a.length(), b.length()) && a.charAt(length) == b.charAt(length)) {
      length++;
    }
    return length;
  }

  /** Optimal string alignment distance: Levenshtein's, with neighbours swapped counted once. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1);
        least = Math.min(least, d[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          least = Math.min(least, d[i - 2][j - 2] + 1);
        }
        d[i][j] = least;
      }
    }
    return d[a.length()][b.length()];
  }
}
