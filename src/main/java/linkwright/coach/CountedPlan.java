package linkwright.coach;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.JobState;
import linkwright.job.plan.Plan;
import linkwright.job.plan.Planning;
import linkwright.job.plan.Recount;
import linkwright.job.plan.Wish;
import linkwright.job.plan.WishReading;
import linkwright.quantity.Read;

/**
 * A job's plan, counted anew from the sample link and the trial length.
 *
 * @param wish the wish as planned; empty while it cannot be read
 * @param plan the plan; empty while there is none
 * @param troubles key of the wish → what is wrong
 * @param sentence what is wrong with the whole, empty if nothing
 */
public record CountedPlan(
    Optional<Wish> wish, Optional<Plan> plan, Map<String, String> troubles, String sentence) {
  private static final CountedPlan NONE =
      new CountedPlan(Optional.empty(), Optional.empty(), Map.of(), "");

  static CountedPlan of(JobState state, Shelf shelf) {
    if (state.course().wish().isEmpty()) {
      return NONE;
    }
    WishReading reading =
        WishReading.of(state.course().wish(), shelf.reference(), shelf.patterns());
    return of(reading, state);
  }

  private static CountedPlan of(WishReading reading, JobState state) {
    if (reading.wish().isEmpty()) {
      return new CountedPlan(Optional.empty(), Optional.empty(), reading.troubles(), "");
    }
    Wish wish = reading.wish().get();
    Read<Plan> plan = Planning.plan(Recount.of(wish, state.trials()));
    return new CountedPlan(Optional.of(wish), plan.found(), Map.of(), plan.problem().orElse(""));
  }

  /** The plan of texts that are being typed, before they are kept. */
  public static CountedPlan ofTyped(Map<String, String> texts, JobState state, Shelf shelf) {
    return of(WishReading.of(texts, shelf.reference(), shelf.patterns()), state);
  }

  /** Whether nothing was said of the wire on hand for that piece, so that none can be missed. */
  boolean stockIsUnknown(String piece) {
    return wish.map(
            known ->
                known.stockMm().isEmpty()
                    && (piece.equals("link") || known.ringStockMm().orElse(List.of()).isEmpty()))
        .orElse(true);
  }
}
