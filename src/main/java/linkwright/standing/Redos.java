package linkwright.standing;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.hands.Hands;
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
  /** However often it failed before, a joint is held to come good in the end. */
  private static final double MOST = 0.8;

  static Redos of(
      Optional<Routine> routine, JobState state, Map<PieceKind, StillToDo> left, Hands hands) {
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
        Rate.usual(usual(routine.get(), left, hands))
            .seen(good, again)
            .expectedRedosPerJoint()
            .orElse(0);
    return new Redos(each, OptionalDouble.of(each * more));
  }

  /** Her own share, of the kind that is counted first; else the routine's usual. */
  private static double usual(Routine routine, Map<PieceKind, StillToDo> left, Hands hands) {
    PieceKind kind = left.keySet().iterator().next();
    return Math.min(MOST, hands.redoShare(kind).orElse(routine.usualRedo()));
  }
}
