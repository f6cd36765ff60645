package linkwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Things of one sort by their names, as they come from file after file. The user's own take the
 * place of the shipped ones; within one of the two a name stands once.
 *
 * @param <T> what is kept
 */
final class Shelf<T> {
  /** A thing, the fields it was read from, and whether it is the user's own. */
  record Kept<T>(String id, T value, Fields from, boolean own) {}

  private final String noun;
  private final Map<String, Kept<T>> kept = new LinkedHashMap<>();
  private boolean own;

  Shelf(String noun) {
    this.noun = noun;
  }

  /** From here on come the user's own. */
  void turnToOwn() {
    own = true;
  }

  /** Keeps a thing; tells a second one of the same name in the same layer. */
  void put(String id, T value, Fields from, String key) {
    Kept<T> before = kept.get(id);
    if (before != null && before.own() == own) {
      from.wrong(
          key,
          "There is a second " + noun + " \"" + id + "\".",
          "Each name once; the first is in "
              + before.from().problems().file()
              + ", line "
              + (before.from().place(key).getStartMark().getLine() + 1)
              + ".");
    } else {
      kept.put(id, new Kept<>(id, value, from, own));
    }
  }

  List<Kept<T>> all() {
    return List.copyOf(kept.values());
  }

  List<T> values() {
    List<T> values = new ArrayList<>();
    kept.values().forEach(one -> values.add(one.value()));
    return List.copyOf(values);
  }

  List<String> names() {
    return List.copyOf(kept.keySet());
  }
}
