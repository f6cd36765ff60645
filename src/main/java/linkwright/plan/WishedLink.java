package linkwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.Pattern;

/**
 * The link wished: a pattern, or a link that is known by its measures.
 *
 * @param pattern the pattern; empty for a link known by its measures alone
 * @param blankMm the blank's length, mm; empty where it is to be found from the pattern and the
 *     length wished
 * @param formersMm inside diameters that replace the pattern's, by name, mm
 * @param lengthMm length wished or measured, mm
 * @param widthMm width wished or measured, mm
 * @param insideMm what the link adds along the pull, if it was measured, mm
 * @param woven what it adds by its routine where it is folded or turned; empty where its inside
 */
public record WishedLink(
    Optional<Pattern> pattern,
    OptionalDouble blankMm,
    Map<String, Double> formersMm,
    OptionalDouble lengthMm,
    OptionalDouble widthMm,
    OptionalDouble insideMm,
    Optional<Woven> woven) {
  public WishedLink {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
  }

  /** Whether the same link was wished, whatever the pattern's file says of it now. */
  public boolean wishedLike(WishedLink other) {
    return pattern.map(Pattern::id).equals(other.pattern.map(Pattern::id))
        && blankMm.equals(other.blankMm)
        && formersMm.equals(other.formersMm)
        && lengthMm.equals(other.lengthMm)
        && widthMm.equals(other.widthMm)
        && insideMm.equals(other.insideMm);
  }
}
