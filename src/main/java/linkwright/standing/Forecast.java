package linkwright.standing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.hands.Fineness;
import linkwright.hands.Hands;
import linkwright.hands.Pace;
import linkwright.job.JobState;
import linkwright.job.TimeSheet;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;

/**
 * Hours still to go, with their spread.
 *
 * <p>For each step: pieces still to come to it, spares too ({@link WorkAhead}), × seconds per
 * piece. Seconds per piece are this job's own, sittings' time in the step over pieces that came
 * through, drawn towards the routine's usual time as if {@value #USUAL_WEIGHT} pieces had been
 * timed at it. The spread of one piece's time is taken as half of it (from memory: hand work of
 * this kind varies so); of n pieces it is the root of the sum, to which the doubt of the mean
 * itself is added.
 *
 * @param seconds seconds to go
 * @param spread one standard deviation of it, s
 * @param learned whether any of it goes by what she was timed at, here or in earlier jobs; so it is
 *     where nothing is left to go
 */
public record Forecast(double seconds, double spread, boolean learned) {
  static final Forecast NOTHING = new Forecast(0, 0, true);
  static final int USUAL_WEIGHT = 3;
  private static final double PIECE_SPREAD = 0.5;

  /**
   * Work still to do in one step.
   *
   * @param step the step's id
   * @param pieces pieces, or batches, still to come through it
   * @param usualSeconds the routine's usual time for each
   * @param batch whether they are batches
   * @param learned whether that usual time is hers, from earlier jobs
   */
  public record Work(
      StepId step, double pieces, double usualSeconds, boolean batch, boolean learned) {}

  /** Hours to go for that work, at the pace of those hours. */
  public static Forecast of(List<Work> work, TimeSheet times) {
    double seconds = 0;
    double variance = 0;
    boolean learned = work.isEmpty();
    for (Work each : work) {
      int come = come(each, times);
      learned |= come > 0 || each.learned();
      double pace = pace(each.step(), each.usualSeconds(), come, times);
      double timed = come + (double) USUAL_WEIGHT;
      double one = pace * PIECE_SPREAD;
      seconds += each.pieces() * pace;
      variance += each.pieces() * one * one + sq(each.pieces() * one) / timed;
    }
    return new Forecast(seconds, Math.sqrt(variance), learned);
  }

  /**
   * Seconds that all of that work takes, of which some was done: what was timed as long as it took,
   * the rest at the pace of those hours. So what was counted without its time is not taken to have
   * needed none.
   *
   * @param work all of it, as if nothing were done
   */
  static double wholeSeconds(Work work, JobState state) {
    TimeSheet times = state.times();
    int come = come(work, times);
    boolean once = work.batch() && come == 0 && state.course().stepsDone().contains(work.step());
    if (once && isWork(work, 1, times)) {
      return spent(work.step(), times);
    }
    double pace = pace(work.step(), work.usualSeconds(), come, times);
    return (come > 0 ? spent(work.step(), times) : 0) + Math.max(0, work.pieces() - come) * pace;
  }

  /**
   * Pieces that were timed; none where they were only counted, in less time than the work takes.
   */
  private static int come(Work work, TimeSheet times) {
    int come =
        (work.batch() ? times.timesByStep() : times.throughByStep()).getOrDefault(work.step(), 0);
    return isWork(work, come, times) ? come : 0;
  }

  private static boolean isWork(Work work, int come, TimeSheet times) {
    return Pace.isWork(spent(work.step(), times), come, OptionalDouble.of(work.usualSeconds()));
  }

  private static double pace(StepId step, double usualSeconds, int come, TimeSheet times) {
    return ((come > 0 ? spent(step, times) : 0) + USUAL_WEIGHT * usualSeconds)
        / (come + USUAL_WEIGHT);
  }

  private static double spent(StepId step, TimeSheet times) {
    return times.secondsByStep().getOrDefault(step, 0.0);
  }

  /**
   * The work of a routine's run that is still to do.
   *
   * @param routine the routine
   * @param state the job
   * @param ahead kind of piece → what is ahead of it
   * @param redosPerJoint how often a joint is made again before it holds
   * @param hands how long it took her before; where she never did it the routine says what is usual
   * @param fineness how much longer a piece of this chain's wire takes
   */
  static List<Work> workLeft(
      Routine routine,
      JobState state,
      Map<PieceKind, WorkAhead> ahead,
      double redosPerJoint,
      Hands hands,
      Fineness fineness) {
    return routine.steps().stream()
        .filter(step -> step.usualSeconds().isPresent())
        .map(step -> left(step, state, ahead, redosPerJoint, hands, fineness))
        .filter(work -> work.pieces() > 0)
        .toList();
  }

  private static Work left(
      Step step,
      JobState state,
      Map<PieceKind, WorkAhead> ahead,
      double redosPerJoint,
      Hands hands,
      Fineness fineness) {
    OptionalDouble hers = hands.ordinarySecondsEach(Pace.of(step));
    double usual =
        Pace.pieceOf(step).map(fineness::times).orElse(1.0)
            * hers.orElse((double) step.usualSeconds().getAsLong());
    if (step.counts() == StepCounting.NOTHING || step.stage().isEmpty()) {
      boolean done = state.course().stepsDone().contains(step.id());
      return new Work(step.id(), done ? 0 : 1, usual, true, hers.isPresent());
    }
    PieceKind piece = step.stage().keySet().iterator().next();
    double left =
        Optional.ofNullable(ahead.get(piece))
            .map(pieces -> (double) pieces.through(step.stage().get(piece)))
            .orElse(0.0);
    boolean batch = step.counts() == StepCounting.BATCH;
    boolean joint = step.stage().get(piece).makesAJoint();
    double again = joint && !batch ? left * redosPerJoint : 0;
    return new Work(
        step.id(), batch ? Math.min(1, left) : left + again, usual, batch, hers.isPresent());
  }

  private static double sq(double x) {
    return x * x;
  }
}
