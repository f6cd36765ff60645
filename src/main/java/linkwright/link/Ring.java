package linkwright.link;

import java.util.Optional;
import linkwright.quantity.Read;

/**
 * A round ring.
 *
 * @param insideMm its finished inside diameter D, in millimetres
 * @param wireMm its wire's diameter d, in millimetres
 */
public record Ring(double insideMm, double wireMm) {
  /**
   * A ring, or a sentence: a size that is not above 0, or a wire thicker than the ring is wide
   * inside, which no former of that size bends.
   */
  public static Read<Ring> of(double insideMm, double wireMm) {
    Optional<String> fault =
        SizeFault.first(
            SizeFault.faultUnlessPositive("The ring's wire", wireMm),
            SizeFault.faultUnlessPositive("The ring's inside", insideMm));
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    if (wireMm > insideMm) {
      return Read.bad(
          "The wire of "
              + Sizes.mm(wireMm)
              + " is thicker than the ring's inside of "
              + Sizes.mm(insideMm)
              + ": take a ring of at least "
              + Sizes.mm(wireMm)
              + " inside, or thinner wire.");
    }
    return Read.good(new Ring(insideMm, wireMm));
  }

  /**
   * The blank, in millimetres: π(D + d), for the centre line keeps its length. Source: the neutral
   * line of a round bar bent to a circle, textbook; common practice.
   */
  public double blankMm() {
    return Rings.blankMm(insideMm, wireMm);
  }

  /** Inside diameter over wire diameter, D/d. */
  public double aspectRatio() {
    return insideMm / wireMm;
  }
}
