package linkwright.standing;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.hands.Fineness;
import linkwright.job.Accounts;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.wire.WireMass;

/**
 * What a chain takes and costs before it is made: the first one, and the same made again without
 * test pieces and trial length.
 *
 * <p>Work that was timed takes as long again as it took, without the test pieces and the trial
 * length; what was only counted, or is still to come, what such work takes her or takes as a rule.
 *
 * <p>Metal is that of links and rings, of the pieces usually lost and of the kerf; lost pieces are
 * credited as scrap, the kerf as filings.
 *
 * @param hoursFirst hours of the first chain, trials included, h
 * @param hoursAgain hours of the same made again, h
 * @param hoursPlusMinus doubt of the first hours, one standard deviation, h
 * @param first what the first costs; no lines without prices
 * @param again what it costs made again
 * @param pricePlusMinus what the doubt of the hours does to the price
 * @param currency the money
 */
public record Quote(
    double hoursFirst,
    double hoursAgain,
    double hoursPlusMinus,
    Price first,
    Price again,
    double pricePlusMinus,
    String currency) {
  private static final double SECONDS_PER_HOUR = 3600;

  /** Whether there are prices to reckon with. */
  public boolean priced() {
    return !first.lines().isEmpty();
  }

  /**
   * What a plan takes and costs.
   *
   * @param forecast hours still to go
   * @param spentSeconds seconds at the bench so far, s
   * @param redosPerJoint how often a joint is made again before it holds
   */
  static Quote of(
      Plan plan,
      Forecast forecast,
      double spentSeconds,
      double redosPerJoint,
      Routine routine,
      JobState state,
      Handbook handbook) {
    Accounts accounts = JobPrices.of(state, handbook, plan.wish().metal());
    PriceList prices = new PriceList(accounts.prices());
    double first = (spentSeconds + forecast.seconds()) / SECONDS_PER_HOUR;
    double again =
        againHours(plan, plan.wish().usualLoss(), redosPerJoint, routine, state, handbook);
    double spread = forecast.spread() / SECONDS_PER_HOUR;
    double perHour =
        prices.of(PriceList.HOUR)
            * (1 + prices.of(PriceList.OVERHEAD))
            * (1 + prices.of(PriceList.MARGIN))
            * (1 + prices.of(PriceList.TAX));
    return new Quote(
        first,
        again,
        spread,
        Price.of(used(plan, first, plan.wish().usualLoss()), prices),
        Price.of(used(plan, again, plan.wish().usualLoss()), prices),
        spread * perHour,
        accounts.currency());
  }

  /**
   * What a closed job took and cost, as it was weighed in and without a doubt, beside what the same
   * would take by the hands as they are now, that job's own work among what taught them.
   *
   * @param lossShare the share of links that was lost, habit and that run together: what is
   *     reckoned with where no book tells of any
   */
  static Quote ofClosed(
      Plan plan,
      Map<PieceKind, StillToDo> left,
      double lossShare,
      Routine routine,
      JobState state,
      Handbook handbook) {
    Handbook next = handbook.forJob("", List.of());
    JobState fresh = fresh(state, handbook);
    double redos = Redos.of(Optional.of(routine), fresh, left, next).perJoint();
    double loss = PlanDefaults.lossTaught(Optional.of(routine), next).orElse(lossShare);
    double again = againHours(plan, loss, redos, routine, fresh, next);
    Closing closing = Closing.of(state, plan, Optional.of(routine));
    Accounts bench = JobPrices.of(fresh, handbook, plan.wish().metal());
    Accounts money = bench.prices().isEmpty() ? state.accounts() : bench;
    return new Quote(
        closing.hours(),
        again,
        0,
        closing.first(),
        Price.of(used(plan, again, loss), new PriceList(money.prices())),
        0,
        state.accounts().currency().isBlank() ? money.currency() : state.accounts().currency());
  }

  private static Price.Used used(Plan plan, double hours, double usualLoss) {
    double pieces = plan.massLinksG() + plan.massRingsG();
    double loss = Math.min(0.9, usualLoss);
    double lost = pieces * loss / (1 - loss);
    double density = plan.wish().metal().densityGCm3().value();
    double dust =
        WireMass.grams(plan.wish().wireAreaMm2(), plan.links() * plan.wish().kerfMm(), density)
            + WireMass.grams(
                plan.wish().ringAreaMm2(), plan.rings() * plan.wish().kerfMm(), density);
    return new Price.Used(pieces + lost + dust, lost, dust, plan.solderPlacedG(), hours);
  }

  /** The work of the same plan with nothing done, but for the steps in which something is tried. */
  private static double againHours(
      Plan plan,
      double loss,
      double redosPerJoint,
      Routine routine,
      JobState state,
      Handbook handbook) {
    Set<StepId> trials =
        routine.steps().stream()
            .filter(step -> step.part() == RoutinePart.TRIAL || step.part() == RoutinePart.SAMPLE)
            .map(Step::id)
            .collect(Collectors.toSet());
    JobState fresh = fresh(state, handbook);
    return Forecast.workLeft(
                routine,
                fresh,
                Map.of(
                    PieceKind.LINK,
                    new WorkAhead(
                        plan.links(),
                        plan.blanksToCut(loss),
                        false,
                        fresh.piles().of(PieceKind.LINK)),
                    PieceKind.RING,
                    new WorkAhead(
                        plan.allRings(),
                        plan.allRingsToCut(loss),
                        false,
                        fresh.piles().of(PieceKind.RING))),
                redosPerJoint,
                handbook.hands(),
                Fineness.of(Optional.of(plan.wish())))
            .stream()
            .filter(each -> !trials.contains(each.step()))
            .mapToDouble(each -> Forecast.wholeSeconds(each, state))
            .sum()
        / SECONDS_PER_HOUR;
  }

  private static JobState fresh(JobState state, Handbook handbook) {
    return JobState.replay(
        List.of(
            new Entry(1, Instant.EPOCH, "plan", new Fact.JobOpened("", state.course().routine()))),
        handbook.stages());
  }

  /** Whether a price is reckoned without the metal's: none is known for it. */
  public boolean lacksMetal() {
    return priced() && first.lines().stream().noneMatch(line -> line.what().equals("metal"));
  }

  /** The price with its money, as far as one is known. */
  public Optional<Double> price() {
    return priced() ? Optional.of(first.total()) : Optional.empty();
  }
}
