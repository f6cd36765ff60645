package linkwright.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.UnitStyle;

/**
 * The blank and formers to take next.
 *
 * @param blankMm the blank's length
 * @param formersMm the formers' inside diameters by name, all of the pattern's
 * @param expected what this is expected to become
 * @param wish what was wished
 * @param reach how near in size that comes
 * @param overlapMm how deep the wire would press into itself; 0 if no deeper than a tip that is to
 *     lie against the stem may seem to, a quarter of the wire
 */
public record Proposal(
    double blankMm,
    Map<String, Double> formersMm,
    Expected expected,
    LinkSize wish,
    Reach reach,
    double overlapMm) {
  /** Keeps the formers in their order. */
  public Proposal {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
  }

  /** What cannot be had and what can, in sentences; empty if the wish is reached. */
  public Optional<String> shortfall(UnitStyle style) {
    List<String> sentences = new ArrayList<>();
    if (reach != Reach.REACHED) {
      sentences.add(nearest(style));
    }
    if (overlapMm > 0) {
      sentences.add(
          "With these formers the wire presses "
              + style.length(overlapMm)
              + " into itself: turn the tips less, or take smaller formers for them.");
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  private String nearest(UnitStyle style) {
    String remedy =
        reach == Reach.TOO_LONG_AT_THE_SHORTEST
            ? "take smaller formers or wish for a longer link."
            : expected.widthMm() > wish.widthMm()
                ? "take smaller formers for a narrower one."
                : "take larger formers for a wider one.";
    return "A link of "
        + style.length(wish.lengthMm())
        + " by "
        + style.length(wish.widthMm())
        + " cannot be had from these formers; the nearest is "
        + style.length(expected.lengthMm())
        + " by "
        + style.length(expected.widthMm())
        + ": "
        + remedy;
  }
}
