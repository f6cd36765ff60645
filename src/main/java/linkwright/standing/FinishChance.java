package linkwright.standing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * The chance that links and rings both come good from what is in work and the wire on hand, when it
 * is cut as {@link WireStand} says: as many links and rings as are to be cut, and then what is over
 * goes to whatever falls short, to the links first. Wire of one length is not joined to the next; a
 * further coil takes a tail of its own. Links of several sizes are taken at their mean blank.
 *
 * <p>Σ over the links that are lost of P(so many) × P(enough rings from the coils and from what the
 * further links leave). Links and rings are lost apart, each at its own unknown rate ({@link
 * StillToDo#chanceWith}). A simulation of the same rule agrees ({@code FinishChanceTest}).
 */
final class FinishChance {
  /** What further links could still add to the chance when no more of them are tried. */
  private static final double TOO_LITTLE = 1e-6;

  private FinishChance() {}

  /** The chance, 0 to 1. */
  static double of(Plan plan, Map<PieceKind, StillToDo> left, WireStand wire) {
    StillToDo links = left.get(PieceKind.LINK);
    Optional<StillToDo> rings = Optional.ofNullable(left.get(PieceKind.RING));
    Optional<List<WireStand.Bar>> apart = wire.rings();
    int cut = cut(wire.links(), false);
    int coiled = cut(wire.links(), true) + apart.map(bars -> cut(bars, true)).orElse(0);
    double chance = 0;
    double before = 0;
    Optional<List<Double>> rest = Optional.of(over(wire.links()));
    for (int further = 0; rest.isPresent() && 1 - before > TOO_LITTLE; further++) {
      double upTo = links.chanceWith(cut + further);
      List<Double> forRings = apart.map(FinishChance::over).orElse(rest.get());
      chance +=
          (upTo - before)
              * rings.map(each -> each.chanceWith(coiled + turns(plan, forRings))).orElse(1.0);
      before = upTo;
      rest = oneLinkLess(plan, rest.get());
    }
    return Math.min(1, chance);
  }

  private static int cut(List<WireStand.Bar> bars, boolean rings) {
    return bars.stream().mapToInt(bar -> rings ? bar.next().rings() : bar.next().links()).sum();
  }

  private static List<Double> over(List<WireStand.Bar> bars) {
    return bars.stream().map(WireStand.Bar::overMm).sorted().toList();
  }

  private static int turns(Plan plan, List<Double> lengthsMm) {
    return plan.ringTurnMm() > 0
        ? lengthsMm.stream()
            .mapToInt(
                mm -> (int) Math.max(0, (mm - plan.wish().coilTailMm()) / plan.ringTurnMm() + 1e-9))
            .sum()
        : 0;
  }

  /** One link more off the shortest length that holds it; the last kerf need not be there. */
  private static Optional<List<Double>> oneLinkLess(Plan plan, List<Double> lengthsMm) {
    double each = plan.linkEachMm();
    for (int i = 0; each > 0 && i < lengthsMm.size(); i++) {
      if (lengthsMm.get(i) + plan.wish().kerfMm() + 1e-9 >= each) {
        List<Double> rest = new ArrayList<>(lengthsMm);
        rest.set(i, Math.max(0, lengthsMm.get(i) - each));
        Collections.sort(rest);
        return Optional.of(rest);
      }
    }
    return Optional.empty();
  }
}
