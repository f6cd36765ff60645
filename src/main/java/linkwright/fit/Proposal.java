package linkwright.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
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
 * @param reach how near that comes
 */
public record Proposal(
    double blankMm, Map<String, Double> formersMm, Expected expected, Wish wish, Reach reach) {
  /** Keeps the formers in their order. */
  public Proposal {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
  }

  /** What cannot be had and what can, as a sentence; empty if the wish is reached. */
  public Optional<String> shortfall(UnitStyle style) {
    String wished = style.length(wish.lengthMm()) + " by " + style.length(wish.widthMm());
    String had =
        "the nearest is "
            + style.length(expected.lengthMm())
            + " by "
            + style.length(expected.widthMm())
            + ".";
    return switch (reach) {
      case REACHED -> Optional.empty();
      case TOO_LONG_AT_THE_SHORTEST ->
          Optional.of(
              "A link of "
                  + wished
                  + " cannot be had from these formers: the bends alone make it longer; "
                  + had
                  + " Take smaller formers or wish for a longer link.");
      case WIDTH_OFF ->
          Optional.of(
              "A link of "
                  + wished
                  + " cannot be had from these formers: "
                  + had
                  + (expected.widthMm() > wish.widthMm()
                      ? " Take smaller formers for a narrower one."
                      : " Take larger formers for a wider one."));
      case CROSSES ->
          Optional.of(
              "A link of "
                  + wished
                  + " would cross its own wire with every former there is: take smaller formers for"
                  + " the tips or wish for a longer link.");
    };
  }
}
