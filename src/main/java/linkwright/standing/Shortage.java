package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.cutting.BlankWish;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.cutting.RingWish;
import linkwright.plan.Plan;

/** The pieces for which the wire on hand will not do. */
final class Shortage {
  /** How long the best cutting is looked for; the best found is near enough to be warned by. */
  private static final int STEPS = 5_000;

  /** More than this is not cut for one chain; no cutting is planned for it. */
  private static final int MOST_PIECES = 10_000;

  private Shortage() {}

  /** Kind of piece → how many cannot be cut; a kind that can, or of which nothing is known, not. */
  static Map<String, Integer> of(Standing standing) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    standing
        .left()
        .forEach(
            (piece, todo) -> {
              int lacks = todo.toCut().orElse(0) - todo.canCut();
              if (lacks > 0 && !unknown(standing, piece)) {
                missing.put(piece, lacks);
              }
            });
    return missing.isEmpty() ? together(standing) : missing;
  }

  private static boolean unknown(Standing standing, String piece) {
    return standing.counted().stockIsUnknown(piece) && !(standing.stockLeft().leftMm(piece) > 0);
  }

  /** Links and rings of one wire may each be had from it, and yet not both. */
  private static Map<String, Integer> together(Standing standing) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    Optional<Plan> plan = standing.counted().plan();
    if (plan.isEmpty() || standing.stockLeft().ringsMm().isPresent()) {
      return missing;
    }
    int links = toCut(standing, "link");
    int rings = toCut(standing, "ring");
    if (links == 0 || rings == 0 || links + rings > MOST_PIECES || unknown(standing, "link")) {
      return missing;
    }
    CutOrder order = order(plan.get(), standing.stockLeft().linksMm(), links, rings);
    if (order.problems().isEmpty()) {
      int[] left = {STEPS};
      CutPlan cuts = Cutting.plan(order, () -> left[0]-- <= 0);
      put(missing, "link", cuts.shortBlanks().get(0));
      put(missing, "ring", cuts.shortRings());
    }
    return missing;
  }

  private static CutOrder order(Plan plan, List<Double> stockMm, int links, int rings) {
    return CutOrder.of(
        stockMm,
        List.of(new BlankWish(plan.linkBlankMm(), links)),
        Optional.of(new RingWish(plan.ringTurnMm(), plan.wish().coilTailMm(), rings, 0, 0)),
        plan.wish().kerfMm());
  }

  private static int toCut(Standing standing, String piece) {
    return standing.left().containsKey(piece) ? standing.left().get(piece).toCut().orElse(0) : 0;
  }

  private static void put(Map<String, Integer> missing, String piece, int count) {
    if (count > 0) {
      missing.put(piece, count);
    }
  }
}
