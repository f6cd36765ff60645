package linkwright.standing;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import linkwright.job.Accounts;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.stock.PiecesOver;

/**
 * A job weighed in: what became of the metal, and what the chain costs the first time and made
 * again.
 *
 * @param metalOutG metal weighed out; if nothing was entered, what came back and the chain's own
 * @param unaccountedG weighed out less all that was weighed in, g; empty until both are known
 * @param hours hours at the bench, h
 * @param trialHours those of test pieces and trial length, h, which a second chain does not take
 * @param first what the first chain costs; empty until the chain was weighed
 * @param again what the same chain costs made again
 */
public record Closing(
    double metalOutG,
    OptionalDouble unaccountedG,
    double hours,
    double trialHours,
    Price first,
    Price again) {
  private static final double SECONDS_PER_HOUR = 3600;

  /** Names of what stays once the job is closed; lines of a price have its name before them. */
  private static final String HOURS = "hours";

  private static final String TRIAL_HOURS = "trial_hours";
  private static final String FIRST = "price";
  private static final String AGAIN = "price_again";

  /** Time at the bench, s. */
  public double seconds() {
    return hours * SECONDS_PER_HOUR;
  }

  /** The same without test pieces and trial length, s. */
  public double secondsWithoutTrials() {
    return Math.max(0, hours - trialHours) * SECONDS_PER_HOUR;
  }

  /** Puts what stays among the figures of a job that is being closed. */
  void into(Map<String, Double> figures) {
    figures.put(Accounts.METAL_OUT_G, metalOutG);
    unaccountedG.ifPresent(grams -> figures.put(Accounts.UNACCOUNTED_G, grams));
    figures.put(HOURS, hours);
    figures.put(TRIAL_HOURS, trialHours);
    first.into(FIRST, figures);
    again.into(AGAIN, figures);
  }

  private static Closing kept(Map<String, Double> figures) {
    Double unaccounted = figures.get(Accounts.UNACCOUNTED_G);
    return new Closing(
        figures.getOrDefault(Accounts.METAL_OUT_G, 0.0),
        unaccounted == null ? OptionalDouble.empty() : OptionalDouble.of(unaccounted),
        figures.getOrDefault(HOURS, 0.0),
        figures.getOrDefault(TRIAL_HOURS, 0.0),
        Price.kept(FIRST, figures),
        Price.kept(AGAIN, figures));
  }

  /**
   * Closes the account of a job.
   *
   * @param state the job
   * @param plan its plan, counted anew
   * @param routine its routine, which says which steps are trials; empty if it is not at hand
   */
  public static Closing of(JobState state, Plan plan, Optional<Routine> routine) {
    return reckoned(
        state,
        new Planned(
            plan.massChainG(),
            plan.wish().claspG(),
            plan.solderPlacedG(),
            trialMetalG(state, plan),
            notFound -> PiecesOver.apart(notFound, plan, state).overG()),
        routine);
  }

  /** Closes the account of what was no chain: nothing in it was reckoned before it was weighed. */
  public static Closing of(JobState state, Optional<Routine> routine) {
    return reckoned(state, new Planned(0, 0, 0, 0, notFound -> 0), routine);
  }

  /**
   * Masses by the plan, g: the piece, its clasp, the solder that stays in it, test pieces, over.
   */
  private record Planned(
      double pieceG, double claspG, double placedG, double trialG, DoubleUnaryOperator overG) {}

  private static Closing reckoned(JobState state, Planned planned, Optional<Routine> routine) {
    Accounts accounts = state.accounts();
    if (accounts.figures().containsKey(HOURS)) {
      return kept(accounts.figures());
    }
    Fact.WeighedIn in = accounts.weighedIn();
    double hours = state.times().totalSeconds() / SECONDS_PER_HOUR;
    double trialHours =
        routine
                .filter(known -> known.makes() == Makes.CHAIN)
                .map(known -> trialSeconds(state, known))
                .orElse(0.0)
            / SECONDS_PER_HOUR;
    double chainMetal =
        Math.max(0, in.chainG().orElse(planned.pieceG()) - planned.claspG() - planned.placedG());
    double returned = in.wireReturnedG().orElse(0);
    double scrap = in.cleanScrapG().orElse(0) + in.solderedScrapG().orElse(0);
    double filings = in.filingsG().orElse(0) + in.sweepsG().orElse(0);
    double accounted = chainMetal + returned + scrap + filings;
    boolean weighedOut = accounts.weighedOutG() > 0;
    double out = weighedOut ? accounts.weighedOutG() : accounted;
    OptionalDouble unaccounted =
        weighedOut && in.chainG().isPresent()
            ? OptionalDouble.of(out - accounted)
            : OptionalDouble.empty();
    PriceList prices = new PriceList(accounts.prices());
    double over = planned.overG().applyAsDouble(unaccounted.orElse(0));
    double gone = Math.max(0, out - returned - over);
    Price first = Price.of(new Price.Used(gone, scrap, filings, planned.placedG(), hours), prices);
    double trialMetal = Math.min(gone, planned.trialG());
    Price again =
        Price.of(
            new Price.Used(
                gone - trialMetal,
                Math.max(0, scrap - trialMetal),
                filings,
                planned.placedG(),
                Math.max(0, hours - trialHours)),
            prices);
    return new Closing(out, unaccounted, hours, trialHours, first, again);
  }

  private static double trialSeconds(JobState state, Routine routine) {
    Set<StepId> trials =
        routine.steps().stream()
            .filter(step -> step.part() == RoutinePart.TRIAL || step.part() == RoutinePart.SAMPLE)
            .map(Step::id)
            .collect(Collectors.toSet());
    return state.times().secondsByStep().entrySet().stream()
        .filter(step -> trials.contains(step.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  /** Metal of the test pieces that are not in the chain: all but a sample that is link 1. */
  private static double trialMetalG(JobState state, Plan plan) {
    LinksOfSize size = plan.sizes().get(0);
    double gramsPerMm =
        plan.linkBlankMm() > 0 ? size.massG() / (size.links() * plan.linkBlankMm()) : 0;
    double pieces =
        state.trials().inOrder().stream().mapToDouble(Fact.TestPieceTried::blankMm).sum();
    double kept =
        state.trials().sample().filter(Fact.SampleChosen::firstLink).isPresent()
            ? state.trials().samplePiece().map(Fact.TestPieceTried::blankMm).orElse(0.0)
            : 0;
    return Math.max(0, pieces - kept) * gramsPerMm;
  }
}
