package linkwright.plan;

import linkwright.link.Oval;
import linkwright.link.Ring;

/** What a ring adds along the pull: its inside diameter, or the oval's inside length. */
public final class RingLength {
  private RingLength() {}

  /** A ring that cannot be squeezed so counts as round. */
  public static double insideLengthMm(WishedRing ring) {
    if (ring.ovalInsideMm().isEmpty()) {
      return ring.insideMm();
    }
    return Ring.of(ring.insideMm(), ring.wireMm())
        .flatMap(round -> Oval.squeeze(round, ring.ovalInsideMm().getAsDouble()))
        .map(Oval::insideLengthMm)
        .orElse(ring.insideMm());
  }
}
