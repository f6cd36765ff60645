package linkwright.coach.kernel.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.WaitingWords;
import linkwright.job.Pile;
import linkwright.quantity.Decimals;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.standing.StillToDo;

/** One line of what is still to do. */
public final class StillToDoWords {
  private StillToDoWords() {}

  /** What stands at the bench of a chain that was begun without a plan. */
  static final String NO_PLAN =
      "No plan is kept: how many to cut is not known, all metals' cautions are shown";

  /**
   * The line for the job on the bench; empty while none is open or it is closed, and away from the
   * bench while it has no plan.
   */
  public static String of(Model model) {
    return model
        .job()
        .filter(job -> !job.state().course().closed())
        .map(job -> line(model, job))
        .orElse("");
  }

  private static String line(Model model, OpenJob job) {
    if (job.makesChain() && job.state().course().wish().isEmpty()) {
      return model.held().place() == PlaceId.BENCH ? NO_PLAN : "";
    }
    List<String> parts = new ArrayList<>();
    for (Map.Entry<PieceKind, StillToDo> each : job.standing().left().entrySet()) {
      parts.add(of(model, each.getKey(), each.getValue(), job.state().piles().of(each.getKey())));
    }
    return parts.isEmpty() ? "" : "Still to do: " + String.join("; ", parts);
  }

  private static String of(Model model, PieceKind piece, StillToDo left, Pile pile) {
    if (left.more() == 0) {
      return left.wanted() == 1
          ? "no " + piece + ", the one is good"
          : "no " + piece + ", all " + left.wanted() + " are good";
    }
    // A rod or a broken link is there already: it is not cut.
    String begin = pile.stages().isEmpty() || pile.begins(Stage.CUT) ? " to cut" : " to begin";
    String cut =
        left.toCut().isEmpty()
            ? ""
            : left.toCut().getAsInt() == 0
                ? ""
                : ", " + left.toCut().getAsInt() + begin + why(left);
    String redo = WaitingWords.redo(model, piece).map(words -> ", " + words).orElse("");
    return piece.counted(left.more()) + cut + redo;
  }

  /** Once pieces were lost, why more are to be cut than lack. */
  private static String why(StillToDo left) {
    return left.scrapped() == 0 || left.spares() == 0
        ? ""
        : " ("
            + left.spares()
            + " spare, "
            + Decimals.percent(left.lossShare(), 0)
            + " being scrapped)";
  }
}
