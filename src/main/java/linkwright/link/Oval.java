package linkwright.link;

import java.util.Optional;
import linkwright.quantity.Read;

/**
 * A round ring squeezed to an oval: an ellipse whose centre line keeps its length π(D + d), with
 * the minor axis w + d; the inside length is the major axis less d.
 *
 * @param insideWidthMm w, in millimetres
 * @param insideLengthMm along the pull, in millimetres
 */
public record Oval(double insideWidthMm, double insideLengthMm) {
  /**
   * The oval, or a sentence: a width that is not above 0, or wider than the ring was.
   *
   * @param ring the round ring
   * @param insideWidthMm w, in millimetres, above 0 and at most the ring's inside
   */
  public static Read<Oval> squeeze(Ring ring, double insideWidthMm) {
    Optional<String> fault =
        SizeFault.faultUnlessPositive("The oval's inside width", insideWidthMm);
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    if (insideWidthMm > ring.insideMm()) {
      return Read.bad(
          "The oval's inside width of "
              + Sizes.mm(insideWidthMm)
              + " is more than the ring's inside of "
              + Sizes.mm(ring.insideMm())
              + ": squeezing makes it narrower, take at most "
              + Sizes.mm(ring.insideMm())
              + ".");
    }
    double longerHalf =
        Ellipse.longerHalf(
            Rings.blankMm(ring.insideMm(), ring.wireMm()), (insideWidthMm + ring.wireMm()) / 2);
    return Read.good(new Oval(insideWidthMm, 2 * longerHalf - ring.wireMm()));
  }

  /** The inside radius of the oval's ends, in millimetres: b²/a of the inside half axes. */
  public double endRadiusMm() {
    return insideWidthMm * insideWidthMm / (2 * insideLengthMm);
  }

  /** Whether wire of a thickness, in millimetres, swings in its ends: b²/a more than half of it. */
  public boolean swingsOn(double wireMm) {
    return endRadiusMm() > wireMm / 2;
  }

  /** A sentence where wire of a thickness, in millimetres, would jam in its ends; else empty. */
  public Optional<String> told(double wireMm) {
    if (swingsOn(wireMm)) {
      return Optional.empty();
    }
    return Optional.of(
        "An oval of "
            + Sizes.mm(insideWidthMm)
            + " by "
            + Sizes.mm(insideLengthMm)
            + " inside is too narrow at its ends to swing on wire of "
            + Sizes.mm(wireMm)
            + ": squeeze it less, or take a larger ring.");
  }
}
