package linkwright.plan;

import java.util.OptionalDouble;

/**
 * How sure the finished length is: √(n²·σ²(what all links share) + n·σ²(piece to piece)), one
 * standard deviation, mm.
 */
final class LengthDoubt {
  /** Links of a trial length as the routines ask for it. */
  private static final int TRIAL_LINKS = 3;

  private LengthDoubt() {}

  static double ofChain(SettledLink link, int links) {
    return doubt(link.commonSpreadMm(), link.pieceSpreadMm(), links);
  }

  /** What would be left of it after a trial length; empty where one is followed already. */
  static OptionalDouble afterTrial(SettledLink link, int links, LinkBasis basis) {
    if (basis.followed().map(MeasuredLink::hungLinks).orElse(0) > 0) {
      return OptionalDouble.empty();
    }
    double common = LinkSettling.hungSpreadMm(link.pieceSpreadMm(), TRIAL_LINKS);
    return OptionalDouble.of(doubt(common, link.pieceSpreadMm(), links));
  }

  private static double doubt(double commonMm, double pieceMm, int links) {
    return Math.hypot(links * commonMm, Math.sqrt(links) * pieceMm);
  }
}
