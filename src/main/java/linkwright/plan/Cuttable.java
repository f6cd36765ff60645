package linkwright.plan;

import java.util.List;

/** Whether blanks and rings of a plan have sizes that wire can be cut to. */
final class Cuttable {
  private Cuttable() {}

  /** What is wrong, a sentence each. */
  static List<String> problems(Plan plan) {
    ChainWish wish = plan.wish();
    Plan.ToCut all =
        new Plan.ToCut(
            plan.sizes().stream().map(LinksOfSize::toCut).toList(),
            plan.ringsToCut(),
            plan.endRings().map(EndRings::toCut).orElse(0));
    return plan.order(all, all, wish.stockMm(), wish.ringStockMm()).problems();
  }
}
