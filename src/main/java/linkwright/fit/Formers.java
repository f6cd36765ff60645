package linkwright.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which sizes of former are taken together. */
final class Formers {
  private Formers() {}

  /** A size for each of the pattern's formers: the one given, else the pattern's own. */
  static Map<String, Double> complete(Shape shape, Map<String, Double> given) {
    Map<String, Double> all = new LinkedHashMap<>(shape.formersMm());
    all.putAll(given);
    return all;
  }

  /** How many choices {@link #choices} would list; never overflows. */
  static double count(Shape shape, Map<String, List<Double>> owned) {
    double count = 1;
    for (String name : shape.formersMm().keySet()) {
      count *= owned.containsKey(name) ? owned.get(name).size() : 1;
    }
    return count;
  }

  /** Every choice of one size for each former among those owned; the pattern's own if none is. */
  static List<Map<String, Double>> choices(Shape shape, Map<String, List<Double>> owned) {
    List<Map<String, Double>> choices = List.of(Map.of());
    for (Map.Entry<String, Double> former : shape.formersMm().entrySet()) {
      List<Map<String, Double>> longer = new ArrayList<>();
      for (Map<String, Double> begun : choices) {
        for (double mm : owned.getOrDefault(former.getKey(), List.of(former.getValue()))) {
          Map<String, Double> choice = new LinkedHashMap<>(begun);
          choice.put(former.getKey(), mm);
          longer.add(choice);
        }
      }
      choices = longer;
    }
    return choices;
  }
}
