package linkwright.standing;

import linkwright.job.Pile;
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
  static WorkAhead of(StillToDo left, Pile pile, double usualLoss) {
    return new WorkAhead(left.wanted(), left.toCutOrAsMany(), left.more() == 0, pile, usualLoss);
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
