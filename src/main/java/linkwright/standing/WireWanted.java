package linkwright.standing;

import java.util.Optional;
import linkwright.plan.Plan;

/**
 * Wire that an open job still lacks.
 *
 * @param metal its metal's id
 * @param wireMm its thickness, mm
 * @param lacksMm how much more than is on hand for it, mm, above 0
 */
public record WireWanted(String metal, double wireMm, double lacksMm) {
  /** What a job lacks of its links' wire; nothing said of wire: all that the plan takes. */
  public static Optional<WireWanted> of(Standing standing) {
    Optional<Plan> plan = standing.counted().plan();
    double lacks =
        standing
            .wire()
            .filter(WireStand::known)
            .map(WireStand::shortMm)
            .orElseGet(() -> plan.map(Plan::wireTotalMm).orElse(0.0));
    return plan.filter(any -> lacks > 0)
        .map(known -> new WireWanted(known.wish().metal().id(), known.wish().wireMm(), lacks));
  }
}
