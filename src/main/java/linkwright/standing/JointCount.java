package linkwright.standing;

import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * Joints looked at, counted by link: a link is as good as its worst joint.
 *
 * @param failed joints that failed, 0 to {@code of}
 * @param of joints looked at, 1 or more
 * @param each joints of one piece, 1 or more
 */
public record JointCount(int failed, int of, int each) {
  public JointCount {
    if (failed < 0 || failed > of || of < 1 || each < 1) {
      throw new IllegalArgumentException(failed + " of " + of + " joints, " + each + " each");
    }
  }

  /** Joints that one piece of that kind has by the plan; one where nothing says. */
  public static int each(PieceKind piece, Standing standing) {
    return PieceKind.LINK.equals(piece)
        ? standing.counted().plan().flatMap(Plan::formed).stream()
            .mapToInt(link -> Math.max(1, link.pattern().joints().size()))
            .findFirst()
            .orElse(1)
        : 1;
  }

  /** Pieces that were looked at, one of which only some joints were seen among them. */
  public int pieces() {
    return (of + each - 1) / each;
  }

  /** Joints left over from pieces looked at whole. */
  public int over() {
    return of % each;
  }

  /** The fewest pieces that so many failed joints can be on. */
  public int fewestFailed() {
    return (failed + each - 1) / each;
  }

  /** The most pieces that they can be on. */
  public int mostFailed() {
    return Math.min(failed, pieces());
  }

  /** Pieces that are good if the failed joints are on so many: seen whole, and none of these. */
  public int good(int failedPieces) {
    return Math.max(0, Math.min(of / each, pieces() - failedPieces));
  }
}
