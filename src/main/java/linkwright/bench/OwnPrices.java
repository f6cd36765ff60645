package linkwright.bench;

import java.util.Map;

/**
 * Her prices. Money always has its currency: without one nothing is money.
 *
 * @param currency the sign or letters she writes; empty if there are no prices
 * @param metalPerG metal's id → money for a gram as bought
 * @param others name → money, or a share where the name is one of a share, by the names that a
 *     job's prices have
 */
public record OwnPrices(
    String currency, Map<String, Double> metalPerG, Map<String, Double> others) {
  /** No prices. */
  public static final OwnPrices NONE = new OwnPrices("", Map.of(), Map.of());

  /** Copies the maps, in her order. */
  public OwnPrices {
    metalPerG = OwnBench.ordered(metalPerG);
    others = OwnBench.ordered(others);
  }
}
