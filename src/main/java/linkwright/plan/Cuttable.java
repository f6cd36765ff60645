package linkwright.plan;

import java.util.List;
import java.util.Optional;
import linkwright.cutting.BlankWish;
import linkwright.cutting.CutOrder;
import linkwright.cutting.RingWish;

/** Whether blanks and rings of a plan have sizes that wire can be cut to. */
final class Cuttable {
  private Cuttable() {}

  /** What is wrong, a sentence each. */
  static List<String> problems(Plan plan) {
    ChainWish wish = plan.wish();
    Optional<RingWish> rings =
        plan.rings() == 0
            ? Optional.empty()
            : Optional.of(
                new RingWish(plan.ringTurnMm(), wish.coilTailMm(), plan.ringsToCut(), 1, 1));
    CutOrder order =
        CutOrder.of(
            wish.stockMm(),
            List.of(new BlankWish(plan.linkBlankMm(), plan.blanksToCut())),
            rings,
            wish.kerfMm());
    return wish.ringStockMm().map(order::withRingStock).orElse(order).problems();
  }
}
