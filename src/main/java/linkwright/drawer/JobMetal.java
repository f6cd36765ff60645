package linkwright.drawer;

import java.util.List;
import java.util.Optional;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.Strikes;

/**
 * What a job's scale said of its metal, in grams of alloy.
 *
 * @param job the name of its book
 * @param metal the metal of its plan, by id
 * @param outG weighed out for it, g; 0 where nothing was
 * @param in what was weighed in; empty before
 */
public record JobMetal(String job, String metal, double outG, Optional<Fact.WeighedIn> in) {
  /** The key of a wish that names its metal. */
  private static final String METAL = "metal";

  /** What a book says; struck entries count no more. Empty where nothing was weighed. */
  public static Optional<JobMetal> in(String job, List<Entry> entries) {
    Strikes strikes = Strikes.in(entries);
    String metal = "";
    double out = 0;
    Optional<Fact.WeighedIn> in = Optional.empty();
    for (Entry entry : entries) {
      Fact fact = entry.fact();
      if (strikes.has(entry)) {
        continue;
      }
      if (fact instanceof Fact.PlanSet plan) {
        metal = plan.wish().getOrDefault(METAL, "").strip();
      } else if (fact instanceof Fact.MetalWeighedOut weighed) {
        out += weighed.massG();
      } else if (fact instanceof Fact.WeighedIn weighed) {
        in = Optional.of(weighed);
      }
    }
    return metal.isEmpty() || (out == 0 && in.isEmpty())
        ? Optional.empty()
        : Optional.of(new JobMetal(job, metal, out, in));
  }
}
