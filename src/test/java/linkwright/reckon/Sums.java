package linkwright.reckon;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.fit.Tried;
import linkwright.quantity.UnitStyle;

/** Reckons with the shipped data, for tests: {@code reckon("wire", "wire", "0.9 mm", …)}. */
final class Sums {
  static final Library SHIPPED = Library.load(new Home(Path.of("target", "no-such-home")));

  private Sums() {}

  static ReckoningBasis given(Tried... tried) {
    return new ReckoningBasis(
        SHIPPED.reference(),
        new ArrayList<>(SHIPPED.patterns().values()),
        List.of(tried),
        List.of(),
        UnitStyle.METRIC);
  }

  static Reckoning reckon(String sum, String... keysAndTexts) {
    return Reckoner.reckon(sum, typed(keysAndTexts), given());
  }

  static Map<String, String> typed(String... keysAndTexts) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (int i = 0; i < keysAndTexts.length; i += 2) {
      typed.put(keysAndTexts[i], keysAndTexts[i + 1]);
    }
    return typed;
  }

  static double number(Reckoning reckoning, String key) {
    if (!reckoning.good()) {
      throw new AssertionError("not reckoned: " + reckoning.problems());
    }
    return ((Number) reckoning.values().get(key)).doubleValue();
  }

  /** All sentences, for a look at what is told. */
  static String text(Reckoning reckoning) {
    return String.join("\n", reckoning.lines())
        + "\n"
        + String.join("\n", reckoning.warnings())
        + "\n"
        + String.join("\n", reckoning.problems().values());
  }
}
