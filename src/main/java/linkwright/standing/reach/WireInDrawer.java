package linkwright.standing.reach;

import java.util.ArrayList;
import java.util.List;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.plan.Plan;
import linkwright.standing.Standing;
import linkwright.standing.WireStand;

/**
 * Wire that a job lacks, and the lots of the drawer that have some of it.
 *
 * @param wanted what the job lacks
 * @param thereMm what the drawer has of it, mm
 * @param lots the names of those lots; none where it has none
 */
public record WireInDrawer(WireWanted wanted, double thereMm, List<String> lots) {
  public WireInDrawer {
    lots = List.copyOf(lots);
  }

  /** For each wire that is lacking, links' and rings' own; none where no lot was ever entered. */
  public static List<WireInDrawer> of(Standing standing, Drawer drawer) {
    List<WireWanted> wanted = new ArrayList<>(WireWanted.of(standing).stream().toList());
    standing.counted().plan().ifPresent(plan -> rings(wanted, plan, standing));
    return drawer.lots().isEmpty()
        ? List.of()
        : wanted.stream().map(wire -> of(wire, drawer)).toList();
  }

  private static void rings(List<WireWanted> wanted, Plan plan, Standing standing) {
    boolean shared = plan.rings() == 0 || plan.wish().ringsOfSameWire();
    double lacks =
        standing
            .wire()
            .filter(WireStand::known)
            .map(WireStand::shortRingsMm)
            .orElseGet(() -> plan.wireRingsMm() + plan.wireSpareRingsMm());
    if (!shared && lacks > 0) {
      double wireMm = plan.wish().ring().orElseThrow().wireMm();
      wanted.add(new WireWanted(plan.wish().metal().id(), wireMm, lacks));
    }
  }

  private static WireInDrawer of(WireWanted wanted, Drawer drawer) {
    List<Lot> lots =
        drawer.lots().stream()
            .filter(lot -> lot.is(wanted.metal(), wanted.wireMm()))
            .filter(lot -> lot.lengthMm().orElse(0) > 0)
            .toList();
    return new WireInDrawer(
        wanted,
        lots.stream().mapToDouble(lot -> lot.lengthMm().orElse(0)).sum(),
        lots.stream().map(Lot::id).toList());
  }

  /** What is to be bought all the same, mm. */
  public double toBuyMm() {
    return Math.max(0, wanted.lacksMm() - thereMm);
  }
}
