package linkwright.standing;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.Usually;
import linkwright.routine.Routine;

/**
 * What follows from a job's state: its plan counted anew from what was measured, what is still to
 * do, the hours to go. Reckoned once after each entry; screens only read it.
 *
 * @param counted the plan, counted anew; with what is wrong if there is none
 * @param left kind of piece → what is still to do
 * @param eachMm kind of piece → wire that one takes, kerf included, mm
 * @param stockLeft wire on hand now
 * @param hours hours still to go
 */
public record Standing(
    CountedPlan counted,
    Map<String, StillToDo> left,
    Map<String, Double> eachMm,
    StockLeft stockLeft,
    Forecast hours) {
  /** More pieces than anybody cuts: wire is no limit where it is not counted. */
  private static final int NO_LIMIT = 100_000;

  public Standing {
    left = Collections.unmodifiableMap(new LinkedHashMap<>(left));
    eachMm = Map.copyOf(eachMm);
  }

  /** What follows from a state. */
  public static Standing of(JobState state, Handbook handbook) {
    return of(CountedPlan.of(state, handbook), state, handbook);
  }

  /** The plan is counted anew only when something it rests on has changed. */
  public Standing after(JobState before, JobState now, Handbook handbook) {
    boolean same =
        before.course().wish().equals(now.course().wish())
            && before.trials().equals(now.trials())
            && before.course().routine().equals(now.course().routine());
    return same ? of(counted, now, handbook) : of(now, handbook);
  }

  private static Standing of(CountedPlan counted, JobState state, Handbook handbook) {
    StockLeft stock = StockLeft.of(counted.plan(), state.wire());
    Map<String, StillToDo> left = new LinkedHashMap<>();
    Map<String, Double> each = new HashMap<>();
    counted
        .plan()
        .ifPresent(
            plan -> {
              each.put("link", plan.linkEachMm());
              each.put("ring", plan.ringTurnMm());
              left.put("link", still(plan, state, "link", plan.links(), stock, plan.linkEachMm()));
              if (plan.rings() > 0) {
                left.put(
                    "ring", still(plan, state, "ring", plan.rings(), stock, plan.ringTurnMm()));
              }
            });
    counted.part().ifPresent(part -> pieces(left, each, part, state, handbook));
    return new Standing(counted, left, each, stock, hours(left, state, handbook));
  }

  /** What is no chain: as many are wanted of each kind. Its wire is not counted. */
  private static void pieces(
      Map<String, StillToDo> left,
      Map<String, Double> each,
      PartPlan part,
      JobState state,
      Handbook handbook) {
    handbook
        .routine(state.course().routine())
        .ifPresent(
            routine -> {
              for (String kind : routine.pieces().keySet()) {
                Pile pile = state.piles().of(kind);
                left.put(
                    kind,
                    StillToDo.of(part.pieces(), pile, part.usualLoss(), Usually.CHANCE, NO_LIMIT));
              }
              // The blank is that of the piece named first, unless rings are all it makes.
              String first = routine.pieces().keySet().iterator().next();
              OptionalDouble wire = first.equals("ring") ? part.ringBlankMm() : part.blankMm();
              wire.ifPresent(mm -> each.put(first, mm));
            });
  }

  private static StillToDo still(
      Plan plan, JobState state, String piece, int wanted, StockLeft stock, double eachMm) {
    return StillToDo.of(
        wanted,
        state.piles().of(piece),
        plan.wish().usualLoss(),
        plan.wish().confidence(),
        stock.canCut(piece, eachMm, plan.wish()));
  }

  private static Forecast hours(Map<String, StillToDo> left, JobState state, Handbook handbook) {
    Optional<Routine> routine = handbook.routine(state.course().routine());
    return Forecast.of(
        routine
            .map(
                known ->
                    Forecast.workLeft(
                        known,
                        state,
                        piece -> left.containsKey(piece) ? left.get(piece).wanted() : 0))
            .orElse(List.of()),
        state.times());
  }

  /** Kind of piece → how many cannot be cut from the wire on hand; none where all can. */
  public Map<String, Integer> missing() {
    return Shortage.of(this);
  }
}
