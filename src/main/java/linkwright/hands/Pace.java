package linkwright.hands;

import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;

/**
 * How long something took.
 *
 * @param seconds time of the sittings in it, s, above 0
 * @param times pieces that came through, or times that it was done where nothing is counted, 1 or
 *     more
 * @param ordinarySeconds what it would have taken in ordinary wire, s, above 0
 */
public record Pace(double seconds, int times, double ordinarySeconds) {
  /** Less than this share of the usual time was no work: a step looked at, a count caught up. */
  private static final double LEAST_SHARE = 0.1;

  /** The least for what no routine says a usual time of, s. */
  private static final double LEAST_SECONDS = 60;

  /**
   * Whether so much time can have been the work itself, so that something is learnt of it. A step
   * that was opened to be looked at, or pieces made elsewhere and counted here in one go, take a
   * small part of what the work takes. Our own choice of that part.
   *
   * @param seconds time in it, s
   * @param times pieces that came through, or times that it was done
   * @param usualSeconds the usual time for one, s; empty where none is known
   */
  public static boolean isWork(double seconds, int times, OptionalDouble usualSeconds) {
    return times > 0
        && seconds > 0
        && seconds
            >= (usualSeconds.isPresent()
                ? LEAST_SHARE * times * usualSeconds.getAsDouble()
                : LEAST_SECONDS);
  }

  /** Seconds for one. */
  public double each() {
    return seconds / times;
  }

  Pace and(Pace more) {
    return new Pace(
        seconds + more.seconds, times + more.times, ordinarySeconds + more.ordinarySeconds);
  }

  /** The piece whose fineness bears on a step: where each is counted by itself. */
  public static Optional<PieceKind> pieceOf(Step step) {
    return step.counts() == StepCounting.EACH
        ? step.stage().keySet().stream().findFirst()
        : Optional.empty();
  }

  /** What a step is known by: the kind of piece and the stage it reaches, else the step itself. */
  public static String of(Step step) {
    return step.counts() == StepCounting.NOTHING || step.stage().isEmpty()
        ? step.id().word()
        : step.stage().entrySet().stream()
            .findFirst()
            .map(each -> each.getKey() + " " + each.getValue())
            .orElse(step.id().word());
  }
}
