package linkwright.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One test piece: what was taken, what it measured, what was said of it.
 *
 * @param blankMm the blank's length, above 0
 * @param formersMm inside diameters of the formers taken, by name; a name left out means the
 *     pattern's own
 * @param lengthMm its measured length when finished, if it was measured
 * @param widthMm its measured width, if it was measured
 * @param verdicts in any order, maybe none; a measured length or width goes before what a verdict
 *     says of it
 */
public record Tried(
    double blankMm,
    Map<String, Double> formersMm,
    OptionalDouble lengthMm,
    OptionalDouble widthMm,
    List<Verdict> verdicts) {
  /**
   * Checks the sizes.
   *
   * @throws IllegalArgumentException if one is not a finite number above 0
   */
  public Tried {
    FitArguments.positive("blankMm", blankMm);
    formersMm.forEach((name, mm) -> FitArguments.positive("former " + name, mm));
    lengthMm.ifPresent(mm -> FitArguments.positive("lengthMm", mm));
    widthMm.ifPresent(mm -> FitArguments.positive("widthMm", mm));
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
    verdicts = List.copyOf(verdicts);
  }
}
