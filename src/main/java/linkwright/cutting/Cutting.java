package linkwright.cutting;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Plans the cutting of blanks and ring coils from the lengths on hand.
 *
 * <p>A length of S yields n blanks b₁ … bₙ with kerf k when Σ(bᵢ + k) ≤ S + k: the last kerf counts
 * only as far as wire remains. A coil of r rings takes r × turn + tail of it, and where blanks come
 * after it no less than a kerf for the tail. For one size of blank and no rings that is ⌊(S + k)/(b
 * + k)⌋ blanks. What is best, {@link CutPlan} says. Wires apart are planned apart: links are no
 * worse off for want of the rings' wire.
 *
 * <p>Accuracy: whole micrometres, pieces rounded up and lengths down. The same order has the same
 * plan wherever it is asked for: {@link CuttingBudget} counts no time.
 */
public final class Cutting {
  private Cutting() {}

  /**
   * The best plan for the order.
   *
   * @param order an order without {@link CutOrder#problems()}
   * @throws IllegalArgumentException if the order has problems
   */
  public static CutPlan plan(CutOrder order) {
    List<String> problems = order.problems();
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException("order: " + String.join(" ", problems));
    }
    List<OneWire> wires = OneWire.of(order);
    List<BestCut> best = wires.stream().map(wire -> BestCut.of(wire.toCut())).toList();
    List<LengthCut> cuts =
        IntStream.range(0, wires.size())
            .boxed()
            .flatMap(i -> wires.get(i).cuts(best.get(i).counts()).stream())
            .toList();
    return new CutPlan(order, cuts, best.stream().allMatch(BestCut::proved));
  }
}
