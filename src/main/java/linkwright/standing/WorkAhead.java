package linkwright.standing;

import java.util.HashMap;
import java.util.Map;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * The pieces of one kind that have yet to come to each stage: spares are cut and worked as any
 * other up to where they are judged; beyond that only what the chain takes. What is saved on those
 * that are lost sooner is left in: it stands for the further batch that one run in so many needs,
 * and without it more loss would take less time wherever the blanks stay as many.
 *
 * @param wanted pieces the chain takes
 * @param toCut further blanks, spares among them
 * @param enough whether as many as the chain takes came good: what else is in work stays as it is
 * @param pile where the pieces stand
 */
record WorkAhead(int wanted, int toCut, boolean enough, Pile pile) {
  static Map<PieceKind, WorkAhead> of(Map<PieceKind, StillToDo> left, JobState state) {
    Map<PieceKind, WorkAhead> ahead = new HashMap<>();
    left.forEach(
        (kind, todo) ->
            ahead.put(
                kind,
                new WorkAhead(
                    todo.wanted(),
                    todo.toCutOrAsMany(),
                    todo.more() == 0,
                    state.piles().of(kind))));
    return ahead;
  }

  /** Pieces still to come through that stage, 0 or more. */
  int through(Stage stage) {
    int at = pile.stages().indexOf(stage);
    if (at < 0 || at > StillToDo.judged(pile)) {
      return Math.max(0, wanted - pile.atOrPast(stage));
    }
    if (at == 0 || enough) {
      return enough ? 0 : toCut;
    }
    return toCut + pile.alive() - pile.cameThrough(stage);
  }
}
