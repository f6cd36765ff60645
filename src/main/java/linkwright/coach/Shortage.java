package linkwright.coach;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.job.plan.Plan;

/** The pieces for which the wire on hand will not do. */
final class Shortage {
  /** More than this is not cut for one chain; no cutting is planned for it. */
  private static final int MOST_PIECES = 10_000;

  private Shortage() {}

  /** Kind of piece → how many cannot be cut; a kind that can, or of which nothing is known, not. */
  static Map<String, Integer> of(Reckoned reckoned) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    reckoned
        .left()
        .forEach(
            (piece, todo) -> {
              int lacks = todo.toCut().orElse(0) - todo.canCut();
              if (lacks > 0 && !unknown(reckoned, piece)) {
                missing.put(piece, lacks);
              }
            });
    return missing.isEmpty() ? together(reckoned) : missing;
  }

  private static boolean unknown(Reckoned reckoned, String piece) {
    return reckoned.counted().stockIsUnknown(piece) && !(reckoned.stockLeft().leftMm(piece) > 0);
  }

  /** Links and rings of one wire may each be had from it, and yet not both. */
  private static Map<String, Integer> together(Reckoned reckoned) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    Optional<Plan> plan = reckoned.counted().plan();
    if (plan.isEmpty() || reckoned.stockLeft().ringsMm().isPresent()) {
      return missing;
    }
    int links = toCut(reckoned, "link");
    int rings = toCut(reckoned, "ring");
    if (links == 0 || rings == 0 || links + rings > MOST_PIECES || unknown(reckoned, "link")) {
      return missing;
    }
    CutOrder order =
        plan.get().order(links, rings, reckoned.stockLeft().linksMm(), Optional.empty());
    if (order.problems().isEmpty()) {
      CutPlan cuts = Cutting.plan(order);
      put(missing, "link", cuts.shortBlanks().get(0));
      put(missing, "ring", cuts.shortRings());
    }
    return missing;
  }

  private static int toCut(Reckoned reckoned, String piece) {
    return reckoned.left().containsKey(piece) ? reckoned.left().get(piece).toCut().orElse(0) : 0;
  }

  private static void put(Map<String, Integer> missing, String piece, int count) {
    if (count > 0) {
      missing.put(piece, count);
    }
  }
}
