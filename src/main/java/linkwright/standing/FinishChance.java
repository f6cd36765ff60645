package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * The chance that links and rings both come good from what is in work and the wire on hand, cut as
 * it serves both best. Wire of one length is not joined to the next; a coil takes its tail.
 */
final class FinishChance {
  /** Beyond this many spare rings the chance of enough of them gains nothing that shows. */
  private static final int MOST_SPARE_RINGS = 60;

  private FinishChance() {}

  /** The chance, 0 to 1. */
  static double of(Plan plan, Map<PieceKind, StillToDo> left, StockLeft stock) {
    StillToDo links = left.get(PieceKind.LINK);
    StillToDo rings = left.get(PieceKind.RING);
    if (rings == null) {
      return links.chanceWith(blanks(plan, stock.linksMm()));
    }
    if (stock.ringsMm().isPresent()) {
      return links.chanceWith(blanks(plan, stock.linksMm()))
          * rings.chanceWith(stock.canCut(PieceKind.RING, plan.ringTurnMm(), plan.wish()));
    }
    double best = 0;
    int lacks = Math.max(0, rings.more() - rings.inWork());
    for (int spare = 0; spare <= MOST_SPARE_RINGS; spare++) {
      List<Double> rest = lessRings(plan, stock.linksMm(), lacks + spare);
      if (rest.isEmpty() && lacks + spare > 0) {
        break;
      }
      double chance = links.chanceWith(blanks(plan, rest)) * rings.chanceWith(lacks + spare);
      best = Math.max(best, chance);
    }
    return best;
  }

  private static int blanks(Plan plan, List<Double> lengthsMm) {
    double each = plan.linkEachMm();
    return each > 0
        ? lengthsMm.stream()
            .mapToInt(mm -> (int) Math.floor((mm + plan.wish().kerfMm()) / each + 1e-9))
            .sum()
        : 0;
  }

  /**
   * What is left of the lengths when so many rings are cut from the longest; nothing, the empty
   * list, where they do not give so many.
   */
  private static List<Double> lessRings(Plan plan, List<Double> lengthsMm, int count) {
    List<Double> rest = new ArrayList<>(lengthsMm);
    rest.sort(Double::compare);
    int lacks = count;
    for (int i = rest.size() - 1; i >= 0 && lacks > 0; i--) {
      double room = rest.get(i) - plan.wish().coilTailMm();
      int turns = Math.min(lacks, (int) Math.floor(room / plan.ringTurnMm() + 1e-9));
      if (turns > 0) {
        rest.set(i, room - turns * plan.ringTurnMm());
        lacks -= turns;
      }
    }
    return lacks > 0 ? List.of() : rest;
  }
}
