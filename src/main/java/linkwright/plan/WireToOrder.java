package linkwright.plan;

import linkwright.wire.WireMass;

/**
 * Wire to order for a chain from nothing, kerf, coil tail and spares for the usual loss included.
 *
 * @param linksMm of the links' wire, and of the rings' where they are of the same, mm
 * @param linksG its mass, g
 * @param ringsMm of the rings' own wire, mm; 0 where they are cut from the links'
 * @param ringsG its mass, g
 */
public record WireToOrder(double linksMm, double linksG, double ringsMm, double ringsG) {
  /** What a plan asks for. Mass is length × section × density of the plan's metal. */
  public static WireToOrder of(Plan plan) {
    double links = plan.wireLinksMm() + plan.wireSpareMm() + plan.wireEndsMm();
    double rings = plan.wireRingsMm() + plan.wireSpareRingsMm();
    WireByKind wire = WireByKind.of(plan, links, rings);
    return new WireToOrder(
        wire.linksMm(),
        grams(plan, plan.wish().wireAreaMm2(), wire.linksMm()),
        wire.ringsMm(),
        grams(plan, plan.wish().ringAreaMm2(), wire.ringsMm()));
  }

  private static double grams(Plan plan, double areaMm2, double lengthMm) {
    return WireMass.grams(areaMm2, lengthMm, plan.wish().metal().densityGCm3().value());
  }

  /** The mass of both, g. */
  public double massG() {
    return linksG + ringsG;
  }
}
