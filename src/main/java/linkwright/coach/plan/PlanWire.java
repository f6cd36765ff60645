package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.List;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.plan.WireByKind;
import linkwright.plan.WireToOrder;
import linkwright.quantity.UnitStyle;

/** Lengths of a plan's wire in words; links and rings of different wire are never added up. */
final class PlanWire {
  private PlanWire() {}

  /** Wire in all, spares included. */
  static String all(Plan plan, UnitStyle units) {
    return said(plan, WireToOrder.of(plan).linksMm(), WireToOrder.of(plan).ringsMm(), units);
  }

  /** What one repeat takes. */
  static String repeat(Plan plan, UnitStyle units) {
    return said(plan, plan.repeatLinksMm(), plan.repeatRingsMm(), units);
  }

  /**
   * So much of either, mm: one sum where both are the same wire, each with its wire where not.
   *
   * @param ringsMm of the rings that join; those at the ends are of the links' wire
   */
  static String said(Plan plan, double linksMm, double ringsMm, UnitStyle units) {
    ChainWish wish = plan.wish();
    WireByKind wire = WireByKind.of(plan, linksMm, ringsMm);
    if (wire.together()) {
      return units.length(wire.linksMm());
    }
    List<String> wires = new ArrayList<>();
    if (linksMm > 0) {
      wires.add(units.length(linksMm) + " of " + wish.wireSaid(units));
    }
    if (ringsMm > 0) {
      wires.add(units.length(ringsMm) + " of " + wish.ringWireSaid(units));
    }
    return wires.isEmpty() ? units.length(0) : String.join(", ", wires);
  }
}
