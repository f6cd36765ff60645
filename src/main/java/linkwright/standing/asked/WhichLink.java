package linkwright.standing.asked;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linkwright.job.Fact.TestPieceTried;
import linkwright.plan.LinksOfSize;
import linkwright.quantity.UnitStyle;

/** Which of a chain's links a test piece is, where its blank or its length is another one's. */
final class WhichLink {
  /** Natural logarithms of how far a blank may be from a planned one to be taken for its. */
  private static final double NEAR_BLANK = 0.1;

  private static final double FAR_BLANK = 0.2;

  /** A piece whose length is off by less than this share is about such a link. Our own choice. */
  private static final double NEAR_LENGTH = 0.15;

  private static final double FAR_LENGTH = 0.25;

  private WhichLink() {}

  /** The question; empty where blank and length may be those of the link that was said. */
  static Optional<String> asked(TestPieceTried piece, List<LinksOfSize> sizes, UnitStyle units) {
    LinksOfSize own =
        sizes.stream()
            .filter(size -> size.name().equals(piece.size()))
            .findFirst()
            .orElse(sizes.get(0));
    return ofItsBlank(piece, own, sizes, units)
        .or(() -> ofItsLength(piece, own, sizes, units))
        .map(question -> question + ": which link is it?");
  }

  /** The blank of another link of the chain, which would teach this one's size wrongly. */
  private static Optional<String> ofItsBlank(
      TestPieceTried piece, LinksOfSize own, List<LinksOfSize> sizes, UnitStyle units) {
    return sizes.stream()
        .min(Comparator.comparingDouble(size -> apart(piece.blankMm(), size)))
        .filter(near -> apart(piece.blankMm(), near) < NEAR_BLANK)
        .filter(near -> apart(piece.blankMm(), own) > FAR_BLANK)
        .map(
            near ->
                units.length(piece.blankMm())
                    + " is about the blank of the "
                    + near.name()
                    + " link, not of the "
                    + own.name()
                    + " one ("
                    + units.length(own.link().blankMm())
                    + ")");
  }

  /** Another link's length, though the blank that was proposed for this one still stands there. */
  private static Optional<String> ofItsLength(
      TestPieceTried piece, LinksOfSize own, List<LinksOfSize> sizes, UnitStyle units) {
    return sizes.stream()
        .filter(size -> !size.equals(own))
        .filter(near -> piece.lengthMm().isPresent() && off(piece, near) < NEAR_LENGTH)
        .filter(near -> off(piece, own) > FAR_LENGTH)
        .min(Comparator.comparingDouble(near -> off(piece, near)))
        .map(
            near ->
                units.length(piece.lengthMm().orElseThrow())
                    + " is about the length of the "
                    + near.name()
                    + " link, not of the "
                    + own.name()
                    + " one");
  }

  /** By how much its length is another than the link's, as a share; far where that has none. */
  private static double off(TestPieceTried piece, LinksOfSize size) {
    double length = size.link().lengthMm().orElse(Double.POSITIVE_INFINITY);
    return Math.abs(piece.lengthMm().orElse(0) / length - 1);
  }

  private static double apart(double blankMm, LinksOfSize size) {
    return Math.abs(Math.log(blankMm / size.link().blankMm()));
  }
}
