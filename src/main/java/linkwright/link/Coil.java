package linkwright.link;

import java.util.Optional;
import linkwright.quantity.Read;

/**
 * A close coil from which rings are sawn. The saw takes its kerf out of each turn, so the coil is
 * wider than the rings: its inside is D + kerf/π. Springback comes on top: the mandrel that opens
 * to this inside is smaller.
 *
 * @param rings how many rings it gives, one a turn
 * @param ring the finished ring
 * @param insideMm the coil's own inside diameter, in millimetres
 * @param turnMm the wire of one turn, in millimetres
 * @param wireMm the wire of the whole coil with its tail, in millimetres; 0 for no rings
 */
public record Coil(int rings, Ring ring, double insideMm, double turnMm, double wireMm) {
  /**
   * A coil, or a sentence about a size that can't be.
   *
   * @param rings how many, 0 or more
   * @param ring the finished ring
   * @param kerfMm what the saw takes of each, in millimetres, 0 or more; 0 for rings cut with snips
   * @param tailMm what is held while winding and lost, in millimetres, 0 or more
   */
  public static Read<Coil> of(int rings, Ring ring, double kerfMm, double tailMm) {
    if (rings < 0) {
      return Read.bad("A coil of " + rings + " rings: the number of rings is 0 or more.");
    }
    Optional<String> fault =
        SizeFault.first(
            SizeFault.faultIfNegative("The kerf", kerfMm),
            SizeFault.faultIfNegative("The coil's tail", tailMm));
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    double insideMm = ring.insideMm() + kerfMm / Math.PI;
    double turnMm = Rings.turnMm(insideMm, ring.neutralMm(), ring.besideMm());
    double wireMm = rings == 0 ? 0 : rings * turnMm + tailMm;
    return Read.good(new Coil(rings, ring, insideMm, turnMm, wireMm));
  }
}
