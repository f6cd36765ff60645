package linkwright.books;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a field of a book line may hold, and the unchangeable copy that a line keeps. */
final class FieldValues {
  /** Deep enough for every entry, shallow enough that no file can exhaust the stack. */
  static final int DEEPEST = 20;

  /** YAML gives up on a key longer than 1,024 characters on one line; escapes may take ten each. */
  static final int LONGEST_KEY = 100;

  private FieldValues() {}

  static Map<String, Object> copyOf(Map<String, Object> fields) {
    return copyMap(fields, 1);
  }

  private static Map<String, Object> copyMap(Map<?, ?> fields, int depth) {
    Map<String, Object> copy = new LinkedHashMap<>();
    for (Map.Entry<?, ?> field : fields.entrySet()) {
      if (!(field.getKey() instanceof String key) || key.length() > LONGEST_KEY) {
        throw new IllegalArgumentException(
            "a key must be text of at most " + LONGEST_KEY + " characters: " + field.getKey());
      }
      copy.put(key, copyValue(key, field.getValue(), depth));
    }
    return Collections.unmodifiableMap(copy);
  }

  private static Object copyValue(String key, Object value, int depth) {
    if (depth > DEEPEST) {
      throw new IllegalArgumentException(key + " is nested deeper than " + DEEPEST);
    }
    if (value instanceof String || value instanceof Long || value instanceof Boolean) {
      return value;
    }
    if (value instanceof Integer || value instanceof Short || value instanceof Byte) {
      return ((Number) value).longValue();
    }
    if (value instanceof Double || value instanceof Float) {
      double number = ((Number) value).doubleValue();
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException(key + " must be a finite number, not " + number);
      }
      return number;
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list.size());
      for (Object item : list) {
        copy.add(copyValue(key, item, depth + 1));
      }
      return Collections.unmodifiableList(copy);
    }
    if (value instanceof Map<?, ?> map) {
      return copyMap(map, depth + 1);
    }
    throw new IllegalArgumentException(key + " cannot be kept in a job book: " + value);
  }
}
