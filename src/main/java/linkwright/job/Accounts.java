package linkwright.job;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Metal weighed out and in, the user's prices, and what the job came to when it was closed.
 *
 * @param weighedOutG metal weighed out so far, g
 * @param weighedIn the last weighing in; all empty before it
 * @param prices the user's prices by the names of {@link PriceList}
 * @param currency the sign or letters the user writes for money
 * @param figures name → figure of a closed job, as it stays; empty for a job that is open, or was
 *     closed before they were kept
 */
public record Accounts(
    double weighedOutG,
    Fact.WeighedIn weighedIn,
    Map<String, Double> prices,
    String currency,
    Map<String, Double> figures) {
  /** Name of a figure of a closing: metal weighed out, or what was accounted for without, g. */
  public static final String METAL_OUT_G = "metal_out_g";

  /** Name of a figure of a closing: weighed out less all that was accounted for, g. */
  public static final String UNACCOUNTED_G = "unaccounted_g";

  /** Name of a figure of a closing: wire still at the bench that nothing was said of, g. */
  public static final String WIRE_AT_BENCH_G = "wire_at_bench_g";

  /** Name of a figure of a closing: links and rings made that the chain does not take, g. */
  public static final String PIECES_OVER_G = "pieces_over_g";

  /** The figure of a closed job: wire that its plan alone named and that was cut or lost, g. */
  public static final String WIRE_CUT_G = "wire_cut_g";

  private static final OptionalDouble NONE = OptionalDouble.empty();
  static final Accounts EMPTY =
      new Accounts(
          0, new Fact.WeighedIn(NONE, NONE, NONE, NONE, NONE, NONE, NONE), Map.of(), "", Map.of());

  Accounts after(Fact fact) {
    if (fact instanceof Fact.MetalWeighedOut out) {
      return weighed(weighedOutG + out.massG(), weighedIn);
    }
    if (fact instanceof Fact.WeighedIn in) {
      return weighed(weighedOutG, in);
    }
    if (fact instanceof Fact.PricesSet set) {
      return new Accounts(weighedOutG, weighedIn, set.prices(), set.currency(), figures);
    }
    if (fact instanceof Fact.JobClosed done) {
      return closed(done.figures());
    }
    return fact instanceof Fact.JobReopened ? closed(Map.of()) : this;
  }

  private Accounts weighed(double outG, Fact.WeighedIn in) {
    return new Accounts(outG, in, prices, currency, figures);
  }

  private Accounts closed(Map<String, Double> asTheyStay) {
    return new Accounts(weighedOutG, weighedIn, prices, currency, asTheyStay);
  }
}
