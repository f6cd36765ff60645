package linkwright.books.facts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words that stand in a book for a few values.
 *
 * @param words value → word, the usual value first
 */
record Words<E>(Map<E, String> words) {
  static <E> Words<E> of(E one, String first, E two, String second) {
    Map<E, String> words = new LinkedHashMap<>();
    words.put(one, first);
    words.put(two, second);
    return new Words<>(words);
  }

  Words<E> and(E value, String word) {
    Map<E, String> more = new LinkedHashMap<>(words);
    more.put(value, word);
    return new Words<>(more);
  }

  /** The value when nothing stands there. */
  E usual() {
    return words.keySet().iterator().next();
  }

  String word(E value) {
    return words.get(value);
  }

  Optional<E> of(String word) {
    return words.entrySet().stream()
        .filter(each -> each.getValue().equals(word))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  List<String> all() {
    return words.values().stream().filter(word -> !word.isEmpty()).toList();
  }
}
