package linkwright.reckon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.BendSteps;
import linkwright.link.Formed;

/** What has come of a sum so far. */
final class Outcome {
  private final Map<String, Object> values = new LinkedHashMap<>();
  private final List<String> lines = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private Optional<Formed> drawing = Optional.empty();
  private Optional<BendSteps> bends = Optional.empty();

  void put(String key, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(key + " must be a finite number, not " + value);
    }
    values.put(key, value);
  }

  void put(String key, int value) {
    values.put(key, value);
  }

  void put(String key, OptionalDouble value) {
    values.put(key, value.isPresent() ? (Object) value.getAsDouble() : Optional.empty());
  }

  void put(String key, List<?> values) {
    this.values.put(key, List.copyOf(values));
  }

  void put(String key, Map<String, Double> values) {
    this.values.put(key, new LinkedHashMap<>(values));
  }

  /** A sentence for reading. */
  void line(String sentence) {
    lines.add(sentence);
  }

  void warn(String sentence) {
    warnings.add(sentence);
  }

  void warn(List<String> sentences) {
    warnings.addAll(sentences);
  }

  void draw(Formed link) {
    drawing = Optional.of(link);
  }

  void bends(BendSteps steps) {
    bends = Optional.of(steps);
  }

  Reckoning reckoning(Answers answers) {
    if (answers.wrong()) {
      return new Reckoning(
          Map.of(),
          List.of(),
          List.of(),
          answers.problems(),
          answers.missing(),
          Optional.empty(),
          Optional.empty());
    }
    return new Reckoning(values, lines, warnings, Map.of(), List.of(), drawing, bends);
  }
}
