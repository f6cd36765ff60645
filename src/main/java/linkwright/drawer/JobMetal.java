package linkwright.drawer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Accounts;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.Strikes;
import linkwright.wire.WireSection;

/**
 * What a job's scale said of its metal, in grams of alloy.
 *
 * @param job the name of its book
 * @param metal the metal of its plan, by id
 * @param outG weighed out for it, g; 0 where nothing was
 * @param boughtMm3 wire that came for it out of no lot, mm³
 * @param in what was weighed in
 * @param figures the figures with which it was closed; empty while it is not
 */
public record JobMetal(
    String job,
    String metal,
    double outG,
    double boughtMm3,
    Fact.WeighedIn in,
    Optional<Map<String, Double>> figures) {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** The key of a wish that names its metal. */
  private static final String METAL = "metal";

  /** What a book says; struck entries count no more. Empty for a job without a metal. */
  public static Optional<JobMetal> in(String job, List<Entry> entries) {
    Strikes strikes = Strikes.in(entries);
    String metal = "";
    double out = 0;
    double bought = 0;
    Fact.WeighedIn in = new Fact.WeighedIn(NONE, NONE, NONE, NONE, NONE, NONE, NONE);
    Optional<Map<String, Double>> figures = Optional.empty();
    for (Entry entry : entries) {
      Fact fact = entry.fact();
      if (strikes.has(entry)) {
        continue;
      }
      if (fact instanceof Fact.PlanSet plan) {
        metal = plan.wish().getOrDefault(METAL, "").strip();
      } else if (fact instanceof Fact.MetalWeighedOut weighed) {
        out += weighed.massG();
      } else if (fact instanceof Fact.WireAdded wire && wire.lot().isEmpty()) {
        bought += WireSection.round(wire.wireMm()).areaMm2() * wire.lengthMm();
      } else if (fact instanceof Fact.WeighedIn weighed) {
        in = weighed;
      } else if (fact instanceof Fact.JobClosed closed) {
        figures = Optional.of(closed.figures());
      } else if (fact instanceof Fact.JobReopened) {
        figures = Optional.empty();
      }
    }
    return metal.isEmpty()
        ? Optional.empty()
        : Optional.of(new JobMetal(job, metal, out, bought, in, figures));
  }

  /** Scrap of all kinds, g. */
  private double scrapG() {
    return in.cleanScrapG().orElse(0)
        + in.solderedScrapG().orElse(0)
        + in.filingsG().orElse(0)
        + in.sweepsG().orElse(0);
  }

  /**
   * Whether its chain was weighed: what the plan reckoned of one that was not is no metal of its.
   */
  boolean chainWeighed() {
    return in.chainG().isPresent();
  }

  /**
   * What was accounted for when it was closed, g: as the closing had it, clasp and solder off the
   * chain; of a job closed before figures were kept the chain as it was weighed.
   */
  double accountedG() {
    Map<String, Double> kept = figures.orElse(Map.of());
    return chainWeighed() && kept.containsKey(Accounts.METAL_OUT_G)
        ? kept.get(Accounts.METAL_OUT_G) - kept.getOrDefault(Accounts.UNACCOUNTED_G, 0.0)
        : in.chainG().orElse(0) + in.wireReturnedG().orElse(0) + scrapG();
  }

  /** Wire that was still at the bench when it was closed, and that nothing was said of, g. */
  double atBenchG() {
    return figures.orElse(Map.of()).getOrDefault(Accounts.WIRE_AT_BENCH_G, 0.0);
  }

  /** Links and rings that the chain did not take, as they were counted when it was closed, g. */
  double piecesOverG() {
    return figures.orElse(Map.of()).getOrDefault(Accounts.PIECES_OVER_G, 0.0);
  }

  /** Wire that its plan alone named and that went into work, g: what was cut and what came back. */
  double ofPlanG() {
    double cut = figures.orElse(Map.of()).getOrDefault(Accounts.WIRE_CUT_G, 0.0);
    return cut > 0 ? cut + in.wireReturnedG().orElse(0) : 0;
  }

  /** Metal in the finished chain, g. */
  double chainG() {
    return Math.max(0, accountedG() - in.wireReturnedG().orElse(0) - scrapG());
  }
}
