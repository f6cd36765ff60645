package linkwright.coach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Forecast;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.job.StillToDo;
import linkwright.job.plan.PartPlan;
import linkwright.job.plan.Plan;
import linkwright.job.plan.Usually;
import linkwright.quantity.UnitStyle;
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
public record Reckoned(
    CountedPlan counted,
    Map<String, StillToDo> left,
    Map<String, Double> eachMm,
    StockLeft stockLeft,
    Forecast hours) {
  /** More pieces than anybody cuts: wire is no limit where it is not counted. */
  private static final int NO_LIMIT = 100_000;

  public Reckoned {
    left = Collections.unmodifiableMap(new LinkedHashMap<>(left));
    eachMm = Map.copyOf(eachMm);
  }

  static Reckoned of(JobState state, Shelf shelf) {
    return of(CountedPlan.of(state, shelf), state, shelf);
  }

  /** The plan is counted anew only when something it rests on has changed. */
  Reckoned after(JobState before, JobState now, Shelf shelf) {
    boolean same =
        before.course().wish().equals(now.course().wish())
            && before.trials().equals(now.trials())
            && before.course().routine().equals(now.course().routine());
    return same ? of(counted, now, shelf) : of(now, shelf);
  }

  private static Reckoned of(CountedPlan counted, JobState state, Shelf shelf) {
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
    counted.part().ifPresent(part -> pieces(left, each, part, state, shelf));
    return new Reckoned(counted, left, each, stock, hours(left, state, shelf));
  }

  /** What is no chain: as many are wanted of each kind. Its wire is not counted. */
  private static void pieces(
      Map<String, StillToDo> left,
      Map<String, Double> each,
      PartPlan part,
      JobState state,
      Shelf shelf) {
    shelf
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

  private static Forecast hours(Map<String, StillToDo> left, JobState state, Shelf shelf) {
    Optional<Routine> routine = shelf.routine(state.course().routine());
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

  /** The job's own sizes by the placeholders of routine texts, in the user's units. */
  public Map<String, String> words(UnitStyle units) {
    return counted
        .plan()
        .map(plan -> PlanWords.of(plan, units))
        .or(() -> counted.part().map(part -> PlanWords.of(part, units)))
        .orElse(Map.of());
  }

  /** What is short, in a few words each. */
  public List<String> shortages() {
    List<String> shortages = new ArrayList<>();
    Shortage.of(this)
        .forEach(
            (piece, missing) ->
                shortages.add(
                    "wire for " + missing + " more " + piece + (missing == 1 ? "" : "s")));
    return shortages;
  }

  /** What to say when so many are cut and the wire will not do for the rest; empty if it will. */
  String shortAfter(String piece, int count) {
    StillToDo todo = left.get(piece);
    if (todo == null || counted.stockIsUnknown(piece)) {
      return "";
    }
    if (count > todo.canCut()) {
      return "By the book the wire on hand gives only "
          + todo.canCut()
          + " more: enter wire that came (esc, then w), or undo.";
    }
    int missing = Math.max(0, todo.toCut().orElse(0) - count) - (todo.canCut() - count);
    return missing > 0
        ? "The wire on hand will not do: it lacks " + missing + " of this piece."
        : "";
  }
}
