package linkwright.standing;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * What a closed job came to.
 *
 * @param links links of the chain; 0 where no chain was made
 * @param lengthMm its length as measured, else as counted, mm; empty where nothing says
 * @param massG its mass as weighed, else as reckoned, g; empty where nothing says
 * @param seconds time at the bench, s
 * @param price what it sells for; empty without prices
 * @param currency the money of that price
 * @param closedAt when it was closed last
 */
public record ClosedChain(
    int links,
    OptionalDouble lengthMm,
    OptionalDouble massG,
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
    boolean priced = !state.accounts().prices().isEmpty();
    return Optional.of(
        new ClosedChain(
            links(standing),
            first(in.lengthMm(), plan.map(Plan::lengthMm)),
            first(in.chainG(), plan.map(Plan::massChainG)),
            state.times().totalSeconds(),
            priced ? OptionalDouble.of(closing.first().total()) : OptionalDouble.empty(),
            state.accounts().currency(),
            closedAt(entries)));
  }

  private static int links(Standing standing) {
    StillToDo links = standing.left().get(PieceKind.LINK);
    return standing.counted().plan().isEmpty() || links == null ? 0 : links.wanted();
  }

  private static OptionalDouble first(OptionalDouble measured, Optional<Double> reckoned) {
    return measured.isPresent()
        ? measured
        : reckoned.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static Instant closedAt(List<Entry> entries) {
    Instant at = Instant.EPOCH;
    for (Entry entry : entries) {
      at = entry.fact() instanceof Fact.JobClosed ? entry.at() : at;
    }
    return at;
  }
}
