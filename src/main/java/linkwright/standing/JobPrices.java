package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.bench.OwnPrices;
import linkwright.job.Accounts;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.job.Sourced;
import linkwright.plan.WishKeys;
import linkwright.quantity.Decimals;
import linkwright.reference.Metal;

/** A job's prices: those entered for it, else her bench's for its metal. */
public final class JobPrices {
  private JobPrices() {}

  /** What those of her bench that were taken are known by begins so. */
  public static final String KEY = "prices.";

  /** What was taken where nothing was typed, with her bench's prices where none were entered. */
  static Map<String, Sourced> beside(
      Map<String, Sourced> taken, JobState state, Handbook handbook) {
    Map<String, Sourced> all = new LinkedHashMap<>(taken);
    all.keySet().removeIf(key -> key.startsWith(KEY));
    if (fromBench(state, handbook)) {
      Accounts money = of(state, handbook);
      money.prices().forEach((name, value) -> all.put(KEY + name, said(name, value, money)));
    }
    return all;
  }

  private static Sourced said(String name, double value, Accounts money) {
    String said =
        PriceList.isShare(name)
            ? Decimals.percent(value, 2)
            : Decimals.upTo(value, 4) + " " + money.currency();
    return new Sourced(said, Sourced.Source.BENCH);
  }

  /** Whether the prices are her bench's: none were entered for the job. */
  public static boolean fromBench(JobState state, Handbook handbook) {
    return state.accounts().prices().isEmpty()
        && !state.course().closed()
        && !of(state, handbook).prices().isEmpty();
  }

  /** The money of a job with its prices filled in; a closed job keeps what it had. */
  public static Accounts of(JobState state, Handbook handbook) {
    Accounts own = state.accounts();
    OwnPrices bench = handbook.own().prices();
    if (!own.prices().isEmpty() || bench.currency().isEmpty() || state.course().closed()) {
      return own;
    }
    Map<String, Double> prices = new LinkedHashMap<>();
    metal(state, handbook)
        .map(metal -> bench.metalPerG().get(metal.id()))
        .ifPresent(each -> prices.put(PriceList.METAL_PER_G, each));
    prices.putAll(bench.others());
    return new Accounts(
        own.weighedOutG(), own.weighedIn(), prices, bench.currency(), own.figures());
  }

  /**
   * The same for a plan in that metal: where the job's own plan is in another, a price per gram
   * that was entered for it says nothing of this one, and her bench's is taken, if it has one.
   */
  static Accounts of(JobState state, Handbook handbook, Metal planned) {
    Accounts money = of(state, handbook);
    if (metal(state, handbook).filter(planned::equals).isPresent()) {
      return money;
    }
    OwnPrices bench = handbook.own().prices();
    Map<String, Double> prices = new LinkedHashMap<>(money.prices());
    Optional<Double> each =
        bench.currency().equals(money.currency())
            ? Optional.ofNullable(bench.metalPerG().get(planned.id()))
            : Optional.empty();
    each.ifPresentOrElse(
        known -> prices.put(PriceList.METAL_PER_G, known),
        () -> prices.remove(PriceList.METAL_PER_G));
    return new Accounts(
        money.weighedOutG(), money.weighedIn(), prices, money.currency(), money.figures());
  }

  /** The job with its prices filled in. */
  public static JobState filled(JobState state, Handbook handbook) {
    Accounts priced = of(state, handbook);
    return priced.equals(state.accounts()) ? state : state.with(priced);
  }

  private static Optional<Metal> metal(JobState state, Handbook handbook) {
    String typed = state.course().wish().getOrDefault(WishKeys.METAL, "");
    return typed.isBlank() ? Optional.empty() : handbook.reference().metal(typed).found();
  }
}
