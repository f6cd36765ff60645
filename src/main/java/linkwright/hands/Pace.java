package linkwright.hands;

import java.util.Optional;
import linkwright.routine.Counts;
import linkwright.routine.PieceKind;
import linkwright.routine.Step;

/**
 * How long something took.
 *
 * @param seconds time of the sittings in it, s, above 0
 * @param times pieces that came through, or times that it was done where nothing is counted, 1 or
 *     more
 * @param ordinarySeconds what it would have taken in ordinary wire, s, above 0
 */
public record Pace(double seconds, int times, double ordinarySeconds) {
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
    return step.counts() == Counts.EACH
        ? step.stage().keySet().stream().findFirst()
        : Optional.empty();
  }

  /** What a step is known by: the kind of piece and the stage it reaches, else the step itself. */
  public static String of(Step step) {
    return step.counts() == Counts.NOTHING || step.stage().isEmpty()
        ? step.id().word()
        : step.stage().entrySet().stream()
            .findFirst()
            .map(each -> each.getKey() + " " + each.getValue())
            .orElse(step.id().word());
  }
}
