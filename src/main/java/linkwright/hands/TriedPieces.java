package linkwright.hands;

import java.util.ArrayList;
import java.util.List;
import linkwright.fit.Tried;
import linkwright.job.Fact;
import linkwright.job.Trials;

/** Test pieces of a book as the fit takes them. */
public final class TriedPieces {
  /** A test piece of wire that differs by less is of the same wire, mm. */
  private static final double SAME_WIRE_MM = 0.005;

  private TriedPieces() {}

  /** Those of the planned link, in order; pieces of other wire teach nothing of this one. */
  public static List<Tried> of(Trials trials, double wireMm) {
    return of(trials, wireMm, "");
  }

  /** Those of another link of the chain, by its name. */
  public static List<Tried> of(Trials trials, double wireMm, String size) {
    List<Tried> tried = new ArrayList<>();
    for (Fact.TestPieceTried piece : trials.inOrder()) {
      if (piece.size().equals(size) && Math.abs(piece.wireMm() - wireMm) < SAME_WIRE_MM) {
        tried.add(
            new Tried(
                piece.blankMm(),
                piece.formersMm(),
                piece.lengthMm(),
                piece.widthMm(),
                Verdicts.of(piece.verdicts())));
      }
    }
    return tried;
  }
}
