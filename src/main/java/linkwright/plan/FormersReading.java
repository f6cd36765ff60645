package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.link.Pattern;
import linkwright.quantity.Items;
import linkwright.quantity.Length;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** Reads formers by name: {@code eye=2.5 mm, body=3 mm}. */
final class FormersReading {
  private final Typed typed;

  FormersReading(Typed typed) {
    this.typed = typed;
  }

  Map<String, Double> of(String key, Optional<Pattern> pattern) {
    return typed.optional(key, text -> read(text, pattern)).orElse(Map.of());
  }

  private static Read<Map<String, Double>> read(String text, Optional<Pattern> pattern) {
    Map<String, Double> formers = new LinkedHashMap<>();
    for (String item : Items.of(text)) {
      int sign = item.indexOf('=');
      if (sign < 1) {
        return Read.bad(
            "“"
                + item.strip()
                + "” does not say which former it is: write "
                + example(item.strip(), pattern)
                + ".");
      }
      String name = item.substring(0, sign).strip();
      if (pattern.isPresent() && !pattern.get().formersMm().containsKey(name)) {
        return Read.bad(unknown(name, pattern.get()));
      }
      Read<Length> size = Length.readSize(item.substring(sign + 1));
      if (size instanceof Read.Bad<Length> bad) {
        return Read.bad(bad.sentence());
      }
      formers.put(name, size.orThrow().mm());
    }
    return Read.good(formers);
  }

  /** In the names of the pattern, so that it could be typed as it stands. */
  private static String example(String item, Optional<Pattern> pattern) {
    String name =
        pattern.flatMap(known -> known.formersMm().keySet().stream().findFirst()).orElse("eye");
    String sized = name + "=2.5 mm";
    if (item.isEmpty() || item.indexOf('=') >= 0) {
      return sized;
    }
    int gap = item.indexOf(' ');
    String first = gap < 0 ? "" : item.substring(0, gap);
    if (pattern.filter(known -> known.formersMm().containsKey(first)).isPresent()) {
      return "“" + first + "=" + item.substring(gap).strip() + "”";
    }
    boolean size = Length.readSize(item) instanceof Read.Good<Length>;
    return size
        ? name + "=" + item
        : "“" + name + "=" + item + "”, by its name at your bench, or " + sized;
  }

  private static String unknown(String name, Pattern pattern) {
    return "The pattern "
        + pattern.id()
        + " has no former “"
        + name
        + "”. "
        + Nearest.of(name, pattern.formersMm().keySet())
            .map(near -> "Did you mean " + near + "?")
            .orElse("It has: " + String.join(", ", pattern.formersMm().keySet()) + ".");
  }
}
