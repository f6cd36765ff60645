package linkwright.reckon;

import java.util.List;

/**
 * One sum of the reckoner.
 *
 * @param id its name in commands: {@code wire}
 * @param title what it finds, in a few words
 * @param says what it does, a sentence
 * @param asks what it asks for, in order
 * @param shown the keys of what an example gives besides what is always needed
 */
public record Sum(String id, String title, String says, List<Ask> asks, List<String> shown) {
  /** Copies the lists. */
  public Sum {
    asks = List.copyOf(asks);
    shown = List.copyOf(shown);
  }

  Sum(String id, String title, String says, List<Ask> asks) {
    this(id, title, says, asks, List.of());
  }

  /** What a whole example of it gives. */
  public List<Ask> exampled() {
    return asks.stream().filter(ask -> ask.needed() || shown.contains(ask.key())).toList();
  }

  /** The ask of that key. */
  Ask ask(String key) {
    return asks.stream()
        .filter(ask -> ask.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the sum " + id + " asks no " + key));
  }
}
