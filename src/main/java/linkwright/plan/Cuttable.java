package linkwright.plan;

import java.util.List;

/** Whether blanks and rings of a plan have sizes that wire can be cut to. */
final class Cuttable {
  private Cuttable() {}

  /** What is wrong, a sentence each. */
  static List<String> problems(Plan plan) {
    ChainWish wish = plan.wish();
    return plan.order(
            plan.bySize(plan.blanksToCut()),
            plan.ringsToCut(),
            plan.endRings().map(EndRings::toCut).orElse(0),
            wish.stockMm(),
            wish.ringStockMm())
        .problems();
  }
}
