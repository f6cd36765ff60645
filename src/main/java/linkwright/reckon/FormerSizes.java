package linkwright.reckon;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import linkwright.quantity.Length;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** Reads sizes by name: {@code bow=3 mm,3.5 mm; tip=1 mm}. */
final class FormerSizes {
  /** A semicolon, or a comma after which a name and an equals sign follow. */
  private static final Pattern BETWEEN = Pattern.compile(";|,(?=[^,;=]*\\p{L}[^,;=]*=)");

  private FormerSizes() {}

  /**
   * The sizes of each name, mm.
   *
   * @param typed what was typed
   * @param known the names there are
   * @param what what a name stands for, for sentences: {@code former}
   */
  static Read<Map<String, List<Double>>> read(String typed, Collection<String> known, String what) {
    Map<String, List<Double>> sizes = new LinkedHashMap<>();
    for (String item : BETWEEN.split(typed, -1)) {
      if (item.isBlank()) {
        continue;
      }
      int sign = item.indexOf('=');
      if (sign < 1) {
        return Read.bad(
            "“"
                + item.strip()
                + "” names no "
                + what
                + ": write its name and its size, as "
                + known.stream().findFirst().orElse("eye")
                + "=2.5 mm.");
      }
      String name = item.substring(0, sign).strip();
      if (!known.contains(name)) {
        return Read.bad(unknown(name, known, what));
      }
      Read<List<Length>> read = Length.readList(item.substring(sign + 1));
      if (read instanceof Read.Bad<List<Length>> bad) {
        return Read.bad(bad.sentence());
      }
      List<Double> lengths = read.orThrow().stream().map(Length::mm).toList();
      if (lengths.contains(0.0)) {
        return Read.bad("The " + what + " “" + name + "” has to be more than 0 mm.");
      }
      if (sizes.put(name, lengths) != null) {
        return Read.bad("The " + what + " “" + name + "” is named twice: once is enough.");
      }
    }
    return Read.good(sizes);
  }

  /** As {@link #read}, for one size each. */
  static Read<Map<String, Double>> readOneEach(
      String typed, Collection<String> known, String what) {
    return read(typed, known, what)
        .flatMap(
            sizes -> {
              Map<String, Double> one = new LinkedHashMap<>();
              for (Map.Entry<String, List<Double>> each : sizes.entrySet()) {
                if (each.getValue().size() > 1) {
                  return Read.bad(
                      "The " + what + " “" + each.getKey() + "” has several sizes: give one.");
                }
                one.put(each.getKey(), each.getValue().get(0));
              }
              return Read.good(one);
            });
  }

  private static String unknown(String name, Collection<String> known, String what) {
    return "There is no "
        + what
        + " “"
        + name
        + "” here. "
        + Nearest.of(name, known)
            .map(near -> "Did you mean " + near + "?")
            .orElse("There are: " + String.join(", ", known) + ".");
  }
}
