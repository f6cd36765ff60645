package linkwright.plan;

import linkwright.link.Ring;
import linkwright.quantity.Read;
import linkwright.wire.WireMass;

/**
 * A jump ring at each end of a chain, of the links' wire: two in all, beside the rings that join.
 *
 * @param insideMm inside diameter of one, mm
 * @param blankMm its blank, mm
 * @param toCut blanks so that both come good with the wished chance
 * @param massG both together, g
 */
public record EndRings(double insideMm, double blankMm, int toCut, double massG) {
  /** One at each end. */
  public static final int COUNT = 2;

  static Read<EndRings> of(ChainWish wish, double insideMm) {
    return Ring.of(insideMm, wish.wire())
        .map(
            ring ->
                new EndRings(
                    insideMm,
                    ring.blankMm(),
                    Planning.toCut(wish, COUNT),
                    WireMass.grams(
                        wish.wireAreaMm2(),
                        COUNT * ring.blankMm(),
                        wish.metal().densityGCm3().value())));
  }

  /** What both add to the chain, mm. */
  public double addMm() {
    return COUNT * insideMm;
  }

  /** Wire that they take with their spares and kerfs, mm. */
  public double wireMm(ChainWish wish) {
    return toCut * eachMm(wish);
  }

  /** Wire that one takes with its kerf, mm. */
  public double eachMm(ChainWish wish) {
    return blankMm + wish.kerfMm();
  }
}
