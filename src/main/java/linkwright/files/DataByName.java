package linkwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.files.yaml.YamlFields;

/**
 * Things of one sort by their names, as they come from file after file. The user's own take the
 * place of the shipped ones; within one of the two a name stands once.
 *
 * @param <T> what is kept
 */
public final class DataByName<T> {
  /** A thing, the fields it was read from, and which layer it belongs to. */
  record Kept<T>(String id, T value, YamlFields from, int layer) {}

  private final String noun;
  private final Map<String, Kept<T>> kept = new LinkedHashMap<>();
  private int layer;

  DataByName(String noun) {
    this.noun = noun;
  }

  /** From here on comes what is laid over all that came before. */
  void nextLayer() {
    layer++;
  }

  /** Keeps a thing; tells a second one of the same name in the same layer. */
  void put(String id, T value, YamlFields from, String key) {
    Kept<T> before = kept.get(id);
    if (before != null && before.layer() == layer) {
      from.wrong(
          key,
          "There is a second " + noun + " \"" + id + "\".",
          "Each name once; the first is in "
              + before.from().problems().file()
              + ", line "
              + (before.from().place(key).getStartMark().getLine() + 1)
              + ".");
    } else {
      kept.put(id, new Kept<>(id, value, from, layer));
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
}
