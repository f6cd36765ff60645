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
 * @param perJoint redos expected of one joint before it holds, 0 or more; the mean over the kinds,
 *     by how many pieces of each the chain takes
 * @param expected redos still expected of all pieces that are still to come good; empty where no
 *     routine says
 */
record Redos(double perJoint, OptionalDouble expected) {
  /** However often it failed before, a joint is held to come good in the end. */
  private static final double MOST = 0.8;

  static Redos of(
      Optional<Routine> routine,
      JobState state,
      Map<PieceKind, StillToDo> left,
      Handbook handbook) {
    if (routine.isEmpty() || left.isEmpty()) {
      return new Redos(0, OptionalDouble.empty());
    }
    double all = 0;
    int wanted = 0;
    double expected = 0;
    for (Map.Entry<PieceKind, StillToDo> kind : left.entrySet()) {
      StillToDo pieces = kind.getValue();
      Pile pile = state.piles().of(kind.getKey());
      double each =
          Rate.usual(usual(routine.get(), kind.getKey(), handbook))
              .seen(StillToDo.good(pile), pile.sentBack())
              .expectedRedosPerJoint()
              .orElse(0);
      all += each * pieces.wanted();
      wanted += pieces.wanted();
      expected += each * pieces.more();
    }
    return new Redos(wanted == 0 ? 0 : all / wanted, OptionalDouble.of(expected));
  }

  /** Those still expected once a job is closed: where a routine says, none. */
  OptionalDouble none() {
    return expected.isPresent() ? OptionalDouble.of(0) : expected;
  }

  /** What her books show of that kind; else what her bench says, else the routine's usual. */
  private static double usual(Routine routine, PieceKind kind, Handbook handbook) {
    double said = handbook.own().redo().orElse(routine.usualRedo());
    return Math.min(MOST, handbook.hands().redoShare(kind).orElse(said));
  }
}
