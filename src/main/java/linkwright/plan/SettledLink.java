package linkwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.fit.Proposal;
import linkwright.link.Formed;

/**
 * The link as it is counted: each size from the best that is known of it.
 *
 * @param blankMm its blank, mm
 * @param blankFrom where the blank comes from
 * @param formersMm the formers it is bent over, by name, mm
 * @param lengthMm its length, mm; empty where nothing says
 * @param widthMm its width, mm; empty where nothing says
 * @param sizeFrom where length and width come from
 * @param insideMm what it adds along the pull, mm
 * @param insideFrom where that comes from
 * @param commonSpreadMm doubt of {@code insideMm} that all links share, one standard deviation, mm
 * @param pieceSpreadMm how one link differs from the next, one standard deviation, mm
 * @param formed its shape; empty for a link known by its measures alone
 * @param proposal how the blank was found for the size wished; empty where it was not looked for
 * @param followed whether a piece in her hand is followed, so that its shape needs no warning
 */
public record SettledLink(
    double blankMm,
    FigureSource blankFrom,
    Map<String, Double> formersMm,
    OptionalDouble lengthMm,
    OptionalDouble widthMm,
    FigureSource sizeFrom,
    double insideMm,
    FigureSource insideFrom,
    double commonSpreadMm,
    double pieceSpreadMm,
    Optional<Formed> formed,
    Optional<Proposal> proposal,
    boolean followed) {
  public SettledLink {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
  }

  /**
   * What it has free inside for its neighbours' wires, mm: where it is folded or turned into them,
   * more than it adds.
   *
   * @param wireMm its wire's thickness, mm
   */
  double freeInsideMm(double wireMm) {
    double ends = formed.map(link -> link.lengthMm() - link.insideLengthMm()).orElse(2 * wireMm);
    return Math.max(insideMm, lengthMm.orElse(0) - ends);
  }
}
