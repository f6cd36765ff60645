package linkwright.shell.remembered;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Fields of a line by their kinds.
 *
 * @param fields as they were read; what is of another kind than asked for throws {@link
 *     IllegalArgumentException}
 */
record Given(Map<String, Object> fields) {
  private static IllegalArgumentException otherKind(Object value) {
    return new IllegalArgumentException("of another kind: " + value);
  }

  static String text(Object value) {
    if (value instanceof String text) {
      return text;
    }
    throw otherKind(value);
  }

  static double number(Object value) {
    if (value instanceof Number number) {
      return number.doubleValue();
    }
    throw otherKind(value);
  }

  static int count(Object value) {
    if (value instanceof Long number) {
      return Math.toIntExact(number);
    }
    throw otherKind(value);
  }

  static List<Object> list(Object value, int length) {
    if (value instanceof List<?> list && list.size() == length) {
      return new ArrayList<>(list);
    }
    throw otherKind(value);
  }

  static Map<String, Integer> counts(Object value) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    of(value).fields().forEach((key, each) -> counts.put(key, count(each)));
    return counts;
  }

  private static Given of(Object value) {
    if (!(value instanceof Map<?, ?> map)) {
      throw otherKind(value);
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    map.forEach((key, each) -> fields.put(text(key), each));
    return new Given(fields);
  }

  private Object at(String key) {
    if (!fields.containsKey(key)) {
      throw new IllegalArgumentException("no " + key);
    }
    return fields.get(key);
  }

  String text(String key) {
    return text(at(key));
  }

  double number(String key) {
    return number(at(key));
  }

  OptionalDouble some(String key) {
    return fields.containsKey(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
  }

  Given group(String key) {
    return of(at(key));
  }

  List<Object> list(String key) {
    if (at(key) instanceof List<?> list) {
      return new ArrayList<>(list);
    }
    throw otherKind(at(key));
  }

  List<Given> groups(String key) {
    return list(key).stream().map(Given::of).toList();
  }

  List<Double> numbers(String key) {
    return list(key).stream().map(Given::number).toList();
  }

  Map<String, Double> measures(String key) {
    Map<String, Double> measures = new LinkedHashMap<>();
    group(key).fields().forEach((name, each) -> measures.put(name, number(each)));
    return measures;
  }

  Map<String, String> texts(String key) {
    Map<String, String> texts = new LinkedHashMap<>();
    group(key).fields().forEach((name, each) -> texts.put(name, text(each)));
    return texts;
  }
}
