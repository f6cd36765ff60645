package linkwright.link;

import java.util.Optional;
import linkwright.quantity.Read;

/**
 * A close coil from which rings are sawn. The saw takes its kerf out of each turn, so the coil is
 * wider than the rings: its inside is D + kerf/π. Springback comes on top: the mandrel that opens
 * to this inside is smaller.
 *
 * @param ring the finished ring
 * @param insideMm the coil's own inside diameter, in millimetres
 * @param turnMm the wire of one turn, in millimetres
 */
public record Coil(Ring ring, double insideMm, double turnMm) {
  /**
   * A coil, or a sentence about a size that can't be.
   *
   * @param ring the finished ring
   * @param kerfMm what the saw takes of each, in millimetres, 0 or more; 0 for rings cut with snips
   */
  public static Read<Coil> of(Ring ring, double kerfMm) {
    Optional<String> fault = SizeFault.faultIfNegative("The kerf", kerfMm);
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    double insideMm = ring.insideMm() + kerfMm / Math.PI;
    double turnMm = Rings.turnMm(insideMm, ring.neutralMm(), ring.besideMm());
    return Read.good(new Coil(ring, insideMm, turnMm));
  }
}
