package linkwright.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Maker;

/**
 * What is known of the link beyond the wish: whose hands bend it, over which formers, and the piece
 * that is followed.
 *
 * @param hands what is known of the hands
 * @param taught whether test pieces taught any of it
 * @param ownedMm inside diameters of the formers there are to choose from, by name, mm
 * @param followed the sample link or the trial length that is followed
 */
public record LinkBasis(
    Maker hands,
    boolean taught,
    Map<String, List<Double>> ownedMm,
    Optional<MeasuredLink> followed) {
  public LinkBasis {
    ownedMm = Map.copyOf(ownedMm);
  }

  /**
   * Nothing was tried yet: metal and temper say how the wire springs, the wish names the formers.
   */
  public static LinkBasis untried(ChainWish wish) {
    Maker hands = Planning.maker(wish);
    return new LinkBasis(hands, false, FormersOwned.of(wish, hands), Optional.empty());
  }

  /** The same, following that link. */
  public LinkBasis following(MeasuredLink link) {
    return new LinkBasis(hands, taught, ownedMm, Optional.of(link));
  }
}
