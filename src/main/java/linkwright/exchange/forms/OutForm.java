package linkwright.exchange.forms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** How a command writes what it answers: for reading, or for other programs. */
public enum OutForm {
  TEXT,
  YAML,
  JSON,
  CSV;

  /** What stands in each command's help. */
  public static final String SAYS =
      "text (for reading), yaml, json or csv (for other programs); without it text.";

  /** What a shell offers for it. */
  public static final class Named implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(values()).map(OutForm::word).iterator();
    }
  }

  /** The form of that name. */
  public static Read<OutForm> named(String typed) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    for (OutForm form : values()) {
      if (form.word().equals(word)) {
        return Read.good(form);
      }
    }
    List<String> all = List.of("text", "yaml", "json", "csv");
    return Read.bad(
        "“"
            + typed
            + "” is no form of an answer: write --as text, yaml, json or csv."
            + Nearest.of(word, all).map(near -> " Did you mean " + near + "?").orElse(""));
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Values in this form; text is the caller's own.
   *
   * @param values as {@link YamlOut#of} takes them
   */
  public String written(Map<String, ?> values) {
    return switch (this) {
      case TEXT, YAML -> YamlOut.of(saying(values));
      case JSON -> JsonOut.of(saying(values));
      case CSV -> CsvOut.of(List.of(flat(values)), List.of());
    };
  }

  /** The values below these keys without those keys that say nothing; a table has its columns. */
  private static Map<String, Object> saying(Map<String, ?> values) {
    Map<String, Object> saying = new LinkedHashMap<>();
    values.forEach((key, value) -> saying.put(key, saying(value)));
    return saying;
  }

  private static Object saying(Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<Object, Object> saying = new LinkedHashMap<>();
      map.forEach(
          (key, inner) -> {
            if (!"".equals(inner)) {
              saying.put(key, saying(inner));
            }
          });
      return saying;
    }
    return value instanceof List<?> list ? list.stream().map(OutForm::saying).toList() : value;
  }

  /** A list of values in this form; in YAML and JSON below a key. */
  public String written(String key, List<? extends Map<String, ?>> rows) {
    return written(key, rows, List.of());
  }

  /** The same; of no rows at all the columns are told still. */
  public String written(String key, List<? extends Map<String, ?>> rows, List<String> columns) {
    return this == CSV
        ? CsvOut.of(rows.stream().map(OutForm::flat).toList(), columns)
        : written(Map.of(key, rows));
  }

  /** Nested values side by side: {@code link.blank}, {@code stock.1}. */
  public static Map<String, Object> flat(Map<String, ?> values) {
    Map<String, Object> flat = new LinkedHashMap<>();
    values.forEach((key, value) -> flatten(flat, key, value));
    return flat;
  }

  private static void flatten(Map<String, Object> flat, String key, Object value) {
    if (value instanceof Optional<?> maybe) {
      flatten(flat, key, maybe.isPresent() ? maybe.get() : "");
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((name, inner) -> flatten(flat, key + "." + name, inner));
    } else if (value instanceof List<?> list) {
      List<Object> items = new ArrayList<>(list);
      for (int i = 0; i < items.size(); i++) {
        flatten(flat, key + "." + (i + 1), items.get(i));
      }
    } else {
      flat.put(key, value);
    }
  }
}
