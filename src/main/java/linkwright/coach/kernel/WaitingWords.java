package linkwright.coach.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.job.Again;
import linkwright.routine.PieceKind;
import linkwright.standing.WaitingPiece;

/** What waits anywhere in a job, in words, each with the step where it is taken up. */
public final class WaitingWords {
  /** A longer list would only be skipped; the piles' own place has them all. */
  private static final int SHOWN = 3;

  private WaitingWords() {}

  /** Every pile of the job on the bench; none without a job or its routine. */
  public static List<WaitingPiece> of(Model model) {
    return model.job().map(WaitingWords::of).orElse(List.of());
  }

  private static List<WaitingPiece> of(OpenJob job) {
    return job.standing()
        .walked()
        .map(routine -> WaitingPiece.of(job.state(), routine, job.standing().left()))
        .orElse(List.of());
  }

  /** What waits, but for the kind of piece that a step counts there itself. */
  public static List<WaitingPiece> besides(Model model, AtBench at) {
    return waiting(model).stream()
        .filter(pile -> pile.number() != at.number() || !pile.spot().piece().equals(at.piece()))
        .toList();
  }

  /** All that waits for a step. */
  public static List<WaitingPiece> waiting(Model model) {
    return of(model).stream().filter(WaitingPiece::waits).toList();
  }

  /** In one line; empty if nothing waits. */
  public static String line(List<WaitingPiece> piles) {
    List<String> words =
        new ArrayList<>(piles.stream().limit(SHOWN).map(WaitingWords::of).toList());
    int more = piles.size() - SHOWN;
    if (more > 0) {
      words.add(more + (more == 1 ? " pile more" : " piles more"));
    }
    return String.join(", ", words);
  }

  /** One pile with its step. */
  public static String of(WaitingPiece pile) {
    return pile.counted()
        + again(pile.again())
        + pile.step().map(step -> " at step " + pile.number()).orElse("");
  }

  private static String again(Again when) {
    return switch (when) {
      case NEXT_HEAT -> " with the next heat";
      case NOW -> " now";
      case SPARES -> " unless spares cover";
      case NOT_SAID -> "";
    };
  }

  /** How many pieces of a kind are to be redone, each time with the step; empty for none. */
  public static Optional<String> redo(Model model, PieceKind piece) {
    List<String> redo =
        of(model).stream()
            .filter(pile -> pile.spot().redo() && pile.spot().piece().equals(piece))
            .map(pile -> pile.count() + " to redo at step " + pile.number())
            .toList();
    return redo.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", redo));
  }
}
