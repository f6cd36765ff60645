package linkwright.reckon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import linkwright.link.BendSteps;
import linkwright.link.Formed;

/**
 * What came of a sum.
 *
 * @param values key → value, in order: a Double, an Integer, a String, a list or a map of these, or
 *     an empty Optional where there is no such thing; empty while something is wrong
 * @param lines the same for reading, a sentence each, amounts with their units
 * @param warnings what to mind about it, a sentence each
 * @param problems key of an ask → what is wrong with it; under the empty key what is wrong with all
 *     of it together
 * @param missing keys of the asks that are needed and have no answer yet; each has a problem too
 * @param drawing the link that was reckoned, for the sums that form one
 * @param bends the same bend by bend, where that was asked for
 */
public record Reckoning(
    Map<String, Object> values,
    List<String> lines,
    List<String> warnings,
    Map<String, String> problems,
    List<String> missing,
    Optional<Formed> drawing,
    Optional<BendSteps> bends) {
  /** Copies the collections. */
  public Reckoning {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    lines = List.copyOf(lines);
    warnings = List.copyOf(warnings);
    problems = Collections.unmodifiableMap(new LinkedHashMap<>(problems));
    missing = List.copyOf(missing);
  }

  /**
   * The same with each sentence changed by the same rule, such as another country's trade words.
   */
  public Reckoning inWords(UnaryOperator<String> words) {
    Map<String, String> told = new LinkedHashMap<>(problems);
    told.replaceAll((key, sentence) -> words.apply(sentence));
    return new Reckoning(
        values,
        lines.stream().map(words).toList(),
        warnings.stream().map(words).toList(),
        told,
        missing,
        drawing,
        bends);
  }

  /** The same with what was taken from a maker's own bench. */
  public Reckoning from(Sum sum, Map<String, String> hers) {
    if (hers.isEmpty() || !good()) {
      return this;
    }
    Map<String, Object> more = new LinkedHashMap<>(values);
    more.put("from_your_bench", hers);
    List<String> said = new ArrayList<>(lines);
    OwnAnswers.told(sum, hers).ifPresent(said::add);
    return new Reckoning(more, said, warnings, problems, missing, drawing, bends);
  }

  /** Whether it could be reckoned. */
  public boolean good() {
    return problems.isEmpty();
  }
}
