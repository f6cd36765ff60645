package linkwright.standing;

import java.util.HashMap;
import java.util.Map;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.PartPlan;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.yield.OnTheWay;

/**
 * The pieces of one kind that have yet to come to each stage: spares are cut and worked as any
 * other, until they are lost or judged; beyond that only what the chain takes.
 *
 * @param wanted pieces the chain takes
 * @param toCut further blanks, spares among them
 * @param enough whether as many as the chain takes came good: what else is in work stays as it is
 * @param pile where the pieces stand
 * @param usualLoss the share usually lost, 0 to 1
 */
record WorkAhead(int wanted, int toCut, boolean enough, Pile pile, double usualLoss) {
  static Map<PieceKind, WorkAhead> of(
      Map<PieceKind, StillToDo> left, CountedPlan counted, JobState state) {
    double usualLoss =
        counted
            .plan()
            .map(plan -> plan.wish().usualLoss())
            .or(() -> counted.part().map(PartPlan::usualLoss))
            .orElse(0.0);
    Map<PieceKind, WorkAhead> ahead = new HashMap<>();
    left.forEach(
        (kind, todo) ->
            ahead.put(
                kind,
                new WorkAhead(
                    todo.wanted(),
                    todo.toCutOrAsMany(),
                    todo.more() == 0,
                    state.piles().of(kind),
                    usualLoss)));
    return ahead;
  }

  /** Pieces expected at that stage, 0 or more. */
  double through(Stage stage) {
    int at = pile.stages().indexOf(stage);
    if (at < 0 || at > StillToDo.judged(pile)) {
      return Math.max(0, wanted - pile.atOrPast(stage));
    }
    if (at == 0 || enough) {
      return enough ? 0 : toCut;
    }
    return StillToDo.onTheWay(pile, usualLoss, pile.alive() - StillToDo.good(pile))
        .map(way -> worked(way, at))
        .orElse(0.0);
  }

  private double worked(OnTheWay way, int at) {
    return way.worked(toCut).get(at - 1);
  }
}
