package linkwright.standing.reach;

import java.util.List;
import java.util.Optional;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.standing.Standing;
import linkwright.standing.WireStand;

/**
 * Wire that an open job still lacks.
 *
 * @param metal its metal's id
 * @param wireMm its thickness, mm
 * @param lacksMm how much more than is on hand for it, mm, above 0
 */
public record WireWanted(String metal, double wireMm, double lacksMm) {
  /**
   * What a job lacks of its links' wire, of which rings may be cut too; nothing said of wire: all
   * that the plan takes of it.
   */
  public static Optional<WireWanted> of(Standing standing) {
    return standing
        .counted()
        .plan()
        .map(
            plan ->
                new WireWanted(
                    plan.wish().metal().id(), plan.wish().wireMm(), lacksMm(plan, standing)))
        .filter(wanted -> wanted.lacksMm() > 0);
  }

  private static double lacksMm(Plan plan, Standing standing) {
    boolean shared = plan.wish().ringsOfSameWire();
    WireToOrder order = WireToOrder.of(plan);
    return standing
        .wire()
        .filter(WireStand::known)
        .map(wire -> shared ? wire.shortMm() : wire.shortLinksMm())
        .orElseGet(() -> order.linksMm() + (shared ? order.ringsMm() : 0));
  }

  /** What several jobs lack together, mm. */
  public static double allMm(List<WireWanted> wanted) {
    return wanted.stream().mapToDouble(WireWanted::lacksMm).sum();
  }
}
