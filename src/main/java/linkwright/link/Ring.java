package linkwright.link;

import java.util.Optional;
import linkwright.quantity.Read;
import linkwright.wire.WireSection;

/**
 * A round ring.
 *
 * @param insideMm its finished inside diameter D, in millimetres
 * @param wireMm its wire's thickness d, in millimetres
 * @param neutralMm twice the way from its inside to the line that keeps its length, in millimetres:
 *     d, but for wire that is not alike inside and outside
 * @param besideMm how far the next turn of a close coil lies beside it, in millimetres: d, but for
 *     wire wider than thick
 */
public record Ring(double insideMm, double wireMm, double neutralMm, double besideMm) {
  /** Of round wire. */
  public Ring(double insideMm, double wireMm) {
    this(insideMm, wireMm, wireMm, wireMm);
  }

  /** The same of wire of any section, bent over its flat side. */
  public static Read<Ring> of(double insideMm, WireSection wire) {
    return of(insideMm, wire.thicknessMm())
        .map(round -> new Ring(insideMm, round.wireMm(), 2 * wire.centroidMm(), wire.widthMm()));
  }

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
   * line of a round bar bent to a circle, textbook; common practice. Of other wire the line through
   * its centroid.
   */
  public double blankMm() {
    return Rings.blankMm(insideMm, neutralMm);
  }

  /** Inside diameter over wire diameter, D/d. */
  public double aspectRatio() {
    return insideMm / wireMm;
  }
}
