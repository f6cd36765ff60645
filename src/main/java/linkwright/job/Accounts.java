package linkwright.job;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Metal weighed out and in, and the user's prices.
 *
 * @param weighedOutG metal weighed out so far, g
 * @param weighedIn the last weighing in; all empty before it
 * @param prices the user's prices by the names of {@link PriceList}
 * @param currency the sign or letters the user writes for money
 */
public record Accounts(
    double weighedOutG, Fact.WeighedIn weighedIn, Map<String, Double> prices, String currency) {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  static final Accounts EMPTY =
      new Accounts(0, new Fact.WeighedIn(NONE, NONE, NONE, NONE, NONE, NONE, NONE), Map.of(), "");

  Accounts after(Fact fact) {
    if (fact instanceof Fact.MetalWeighedOut out) {
      return new Accounts(weighedOutG + out.massG(), weighedIn, prices, currency);
    }
    if (fact instanceof Fact.WeighedIn in) {
      return new Accounts(weighedOutG, in, prices, currency);
    }
    if (fact instanceof Fact.PricesSet set) {
      return new Accounts(weighedOutG, weighedIn, set.prices(), set.currency());
    }
    return this;
  }
}
