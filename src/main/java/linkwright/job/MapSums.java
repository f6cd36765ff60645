package linkwright.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BinaryOperator;

/** What comes to a sum in an unchangeable map of sums. */
final class MapSums {
  private MapSums() {}

  /** The same with so much more of one; an order it never has. */
  static <K, V> Map<K, V> plus(Map<K, V> sums, K key, V more, BinaryOperator<V> and) {
    V before = sums.get(key);
    V now = before == null ? more : and.apply(before, more);
    // Nearly every entry of a book comes this way: a map of its own to change is for the rest.
    if (sums.size() == (before == null ? 0 : 1)) {
      return Map.of(key, now);
    }
    Map<K, V> all = new LinkedHashMap<>(sums);
    all.put(key, now);
    return Map.copyOf(all);
  }
}
