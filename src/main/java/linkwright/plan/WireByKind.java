package linkwright.plan;

/**
 * Lengths of a chain's wire, one for each wire that it takes.
 *
 * @param linksMm of the links' wire, and of the rings' where they are of the same, mm
 * @param ringsMm of the rings' own wire, mm; 0 where they are cut from the links'
 * @param together whether all of it is one wire
 */
public record WireByKind(double linksMm, double ringsMm, boolean together) {
  /**
   * So much for links and for the rings that join them; those at the ends are of the links' wire.
   *
   * @param linksMm for links, mm
   * @param ringsMm for rings, mm
   */
  public static WireByKind of(Plan plan, double linksMm, double ringsMm) {
    boolean same = plan.rings() == 0 || plan.wish().ringsOfSameWire();
    return same
        ? new WireByKind(linksMm + ringsMm, 0, true)
        : new WireByKind(linksMm, ringsMm, false);
  }
}
