package linkwright.reckon;

import java.util.List;

/**
 * One sum of the reckoner.
 *
 * @param id its name in commands: {@code wire}
 * @param title what it finds, in a few words
 * @param says what it does, a sentence
 * @param asks what it asks for, in order
 */
public record Sum(String id, String title, String says, List<Ask> asks) {
  /** Copies the list. */
  public Sum {
    asks = List.copyOf(asks);
  }

  /** The ask of that key. */
  Ask ask(String key) {
    return asks.stream()
        .filter(ask -> ask.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the sum " + id + " asks no " + key));
  }
}
