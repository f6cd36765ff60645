package linkwright.standing;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.yield.Rate;

/**
 * How often a joint is done again, by the routine's usual share and what this job has shown.
 *
 * @param perJoint redos expected of one joint before it holds, 0 or more
 * @param expected redos still expected of all pieces that are still to come good; empty where no
 *     routine says
 */
record Redos(double perJoint, OptionalDouble expected) {

  static Redos of(Optional<Routine> routine, JobState state, Map<PieceKind, StillToDo> left) {
    if (routine.isEmpty() || left.isEmpty()) {
      return new Redos(0, OptionalDouble.empty());
    }
    int good = 0;
    int again = 0;
    int more = 0;
    for (Map.Entry<PieceKind, StillToDo> kind : left.entrySet()) {
      Pile pile = state.piles().of(kind.getKey());
      good += kind.getValue().good();
      again += pile.sentBack();
      more += kind.getValue().more();
    }
    double each =
        Rate.usual(routine.get().usualRedo()).seen(good, again).expectedRedosPerJoint().orElse(0);
    return new Redos(each, OptionalDouble.of(each * more));
  }
}
