package linkwright.standing.again;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.standing.Closing;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/**
 * What a closed job came to, by what was entered of it. What was planned is told as planned, and
 * only where nothing was entered.
 *
 * @param links good links of the chain, as they were counted
 * @param wanted links that it was to have; 0 where no chain was planned
 * @param lengthMm its length as measured, mm; empty where it was not
 * @param massG its mass as weighed, g; empty where it was not
 * @param plannedMm the planned length where none was measured, mm
 * @param plannedDoubtMm doubt of that length, one standard deviation, mm
 * @param plannedG the planned mass where none was weighed, g
 * @param seconds time at the bench, s
 * @param price what it sells for, of a chain that was not weighed by the planned mass; empty
 *     without prices
 * @param currency the money of that price
 * @param closedAt when it was closed last
 */
public record ClosedChain(
    int links,
    int wanted,
    OptionalDouble lengthMm,
    OptionalDouble massG,
    OptionalDouble plannedMm,
    double plannedDoubtMm,
    OptionalDouble plannedG,
    double seconds,
    OptionalDouble price,
    String currency,
    Instant closedAt) {

  /** What a job came to; empty while it is not closed. */
  public static Optional<ClosedChain> of(
      List<Entry> entries, JobState state, Standing standing, Handbook handbook) {
    if (!state.course().closed()) {
      return Optional.empty();
    }
    Optional<Plan> plan = standing.counted().plan();
    Fact.WeighedIn in = state.accounts().weighedIn();
    Closing closing =
        plan.map(known -> Closing.of(state, known, handbook.routine(state.course().routine())))
            .orElseGet(() -> Closing.of(state, handbook.routine(state.course().routine())));
    Optional<StillToDo> links =
        plan.flatMap(any -> Optional.ofNullable(standing.left().get(PieceKind.LINK)));
    boolean priced = !state.accounts().prices().isEmpty();
    return Optional.of(
        new ClosedChain(
            links.map(StillToDo::goodForChain).orElse(0),
            links.map(StillToDo::wanted).orElse(0),
            in.lengthMm(),
            in.chainG(),
            unlessKnown(in.lengthMm(), plan.map(Plan::lengthMm)),
            plan.map(Plan::plusMinusMm).orElse(0.0),
            unlessKnown(in.chainG(), plan.map(Plan::massChainG)),
            state.times().totalSeconds(),
            priced ? OptionalDouble.of(closing.first().total()) : OptionalDouble.empty(),
            state.accounts().currency(),
            closedAt(entries)));
  }

  private static OptionalDouble unlessKnown(OptionalDouble entered, Optional<Double> planned) {
    return entered.isPresent() || planned.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(planned.get());
  }

  private static Instant closedAt(List<Entry> entries) {
    Instant at = Instant.EPOCH;
    for (Entry entry : entries) {
      at = entry.fact() instanceof Fact.JobClosed ? entry.at() : at;
    }
    return at;
  }
}
