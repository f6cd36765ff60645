package linkwright.reference;

import java.util.List;

/**
 * A word of the trade, explained for whoever is new to it.
 *
 * @param word the British word
 * @param american what it is called across the Atlantic; the same word if nothing else
 * @param seenAs other forms of it that stand in texts
 * @param says what it means
 */
public record TradeTerm(String word, String american, List<String> seenAs, String says) {
  /** Copies the list. */
  public TradeTerm {
    seenAs = List.copyOf(seenAs);
  }
}
