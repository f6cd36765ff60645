package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.OpenJob;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.again.Learnt;

/** What this job teaches for the next one like it, in sentences. */
public final class NextTime {
  private NextTime() {}

  /** The sentences; none where nothing was learnt. */
  public static List<String> of(OpenJob job, UnitStyle units) {
    Learnt learnt = Learnt.of(job.state(), job.standing());
    List<String> sentences = new ArrayList<>();
    learnt
        .blankMm()
        .ifPresent(
            mm ->
                sentences.add(
                    "Begin with a blank of "
                        + units.length(mm)
                        + (learnt.pieces() > 1
                            ? ": it took " + learnt.pieces() + " test pieces to find it."
                            : ".")));
    if (learnt.again() > 0) {
      sentences.add(many(learnt.again(), "link") + " redone" + often(learnt.againFor()) + ".");
    }
    learnt
        .lossShare()
        .ifPresent(
            share ->
                sentences.add(
                    many(learnt.lost(), "link")
                        + " scrapped"
                        + often(learnt.lostFor())
                        + ": reckon with a usual loss of "
                        + Decimals.percent(share, 1)
                        + ", habit and this run together."));
    int rings = job.state().piles().of(PieceKind.RING).scrapped();
    if (rings > 0) {
      sentences.add(many(rings, "ring") + " scrapped.");
    }
    learnt
        .longerMm()
        .ifPresent(
            mm ->
                sentences.add(
                    "The chain came out "
                        + units.length(Math.abs(mm))
                        + (mm > 0 ? " longer" : " shorter")
                        + " than counted: each link adds "
                        + units.length(learnt.linkAddsMm().orElse(0))
                        + "."));
    return List.copyOf(sentences);
  }

  private static String often(String reason) {
    return reason.isEmpty() ? "" : ", most often for “" + reason + "”";
  }

  private static String many(int count, String piece) {
    return count + " " + piece + (count == 1 ? " was" : "s were");
  }
}
