package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Trials;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;

/**
 * A trial length and what the whole chain would be if it followed it.
 *
 * @param id the entry that logged it
 * @param trial what was hung and measured
 * @param plan the chain counted from it; empty if it cannot be
 * @param problem why it cannot be; empty if it can
 * @param followed whether the chain follows it now
 */
public record TrialLength(
    EntryId id, Fact.TrialMeasured trial, Optional<Plan> plan, String problem, boolean followed) {

  /** All trial lengths of a job, in order. */
  public static List<TrialLength> of(Standing standing, JobState state, Handbook handbook) {
    Trials trials = state.trials();
    Optional<ChainWish> wish = standing.counted().wish();
    List<TrialLength> rows = new ArrayList<>();
    for (Map.Entry<EntryId, Fact.TrialMeasured> each : trials.lengths().entrySet()) {
      boolean followed = trials.chosenLength().filter(each.getKey()::equals).isPresent();
      // Its own rings, though others are wished since.
      Trials following =
          followed && standing.counted().instead().isEmpty()
              ? trials
              : trials.following(each.getKey(), state.course().wish());
      rows.add(
          wish.map(known -> standing.counted().with(following, handbook))
              .map(
                  plan ->
                      new TrialLength(
                          each.getKey(),
                          each.getValue(),
                          plan.found(),
                          plan.problem().orElse(""),
                          followed))
              .orElseGet(
                  () ->
                      new TrialLength(
                          each.getKey(), each.getValue(), Optional.empty(), "", followed)));
    }
    return List.copyOf(rows);
  }

  /** What one link adds by this trial, mm; empty if it cannot be told. */
  public OptionalDouble linkInsideMm() {
    return plan.map(counted -> OptionalDouble.of(counted.meanInsideMm()))
        .orElse(OptionalDouble.empty());
  }
}
