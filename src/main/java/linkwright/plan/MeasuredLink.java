package linkwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A link that was made and is followed: it counts as it was measured, whatever was reckoned of it.
 *
 * @param blankMm the blank it was bent from, mm; empty where only a hung length is known
 * @param formersMm the formers it was bent over, by name, mm; empty: those of the wish
 * @param lengthMm its measured length, mm
 * @param widthMm its measured width, mm
 * @param insideMm what it adds along the pull, mm: measured eye to eye, or from a hung length
 * @param hungLinks links of the hung length that {@code insideMm} comes from; 0 for one piece alone
 */
public record MeasuredLink(
    OptionalDouble blankMm,
    Map<String, Double> formersMm,
    OptionalDouble lengthMm,
    OptionalDouble widthMm,
    OptionalDouble insideMm,
    int hungLinks) {
  public MeasuredLink {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
    Objects.requireNonNull(insideMm);
  }

  /** The same link with what a hung length of so many says it adds. */
  public MeasuredLink hung(double eachInsideMm, int links) {
    return new MeasuredLink(
        blankMm, formersMm, lengthMm, widthMm, OptionalDouble.of(eachInsideMm), links);
  }
}
