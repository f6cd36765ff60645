package linkwright.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How sure the finished length is: √(n²·σ²(what all links share) + n·σ²(piece to piece)), one
 * standard deviation, mm.
 */
final class LengthDoubt {
  /** Links of a trial length as the routines ask for it. */
  private static final int TRIAL_LINKS = 3;

  private LengthDoubt() {}

  /**
   * What was measured of one size says nothing of the next; what the same hands are believed to do
   * is off for all sizes alike.
   */
  static double ofChain(List<LinksOfSize> sizes) {
    double together = 0;
    double squares = 0;
    for (LinksOfSize size : sizes) {
      SettledLink link = size.link();
      double common = size.links() * link.commonSpreadMm();
      boolean apart =
          link.insideFrom() == FigureSource.MEASURED || link.insideFrom() == FigureSource.HERS;
      together += apart ? 0 : common;
      squares += (apart ? common * common : 0) + size.links() * sq(link.pieceSpreadMm());
    }
    return Math.hypot(together, Math.sqrt(squares));
  }

  /**
   * What would be left of it after a trial length; empty where one is followed already, and where
   * so short a one, read by a rule, would tell less than is known: of many small links.
   */
  static OptionalDouble afterTrial(List<LinksOfSize> sizes, LinkBasis basis) {
    if (basis.hungLinks() > 0) {
      return OptionalDouble.empty();
    }
    int links = sizes.stream().mapToInt(LinksOfSize::links).sum();
    double pieces =
        Math.sqrt(
            sizes.stream()
                .mapToDouble(size -> size.links() * sq(size.link().pieceSpreadMm()))
                .sum());
    int repeat = sizes.stream().mapToInt(LinksOfSize::perRepeat).sum();
    int hung = sizes.size() == 1 ? TRIAL_LINKS : Math.max(TRIAL_LINKS, repeat);
    double common = LinkSettling.hungSpreadMm(pieces / Math.sqrt(links), hung);
    double after = Math.hypot(links * common, pieces);
    return after < ofChain(sizes) ? OptionalDouble.of(after) : OptionalDouble.empty();
  }

  private static double sq(double x) {
    return x * x;
  }
}
