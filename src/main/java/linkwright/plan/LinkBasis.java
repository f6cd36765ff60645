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
 * @param others name of another link of the chain → the sample of it that is followed
 * @param hung what a hung length says of links of several sizes; empty where all are alike
 */
public record LinkBasis(
    Maker hands,
    boolean taught,
    Map<String, List<Double>> ownedMm,
    Optional<MeasuredLink> followed,
    Map<String, MeasuredLink> others,
    Optional<HungMean> hung) {
  public LinkBasis {
    ownedMm = Map.copyOf(ownedMm);
    others = Map.copyOf(others);
  }

  /** What is known of the link with no piece followed. */
  public LinkBasis(Maker hands, boolean taught, Map<String, List<Double>> ownedMm) {
    this(hands, taught, ownedMm, Optional.empty(), Map.of(), Optional.empty());
  }

  /**
   * Nothing was tried yet: metal and temper say how the wire springs, the wish names the formers.
   */
  public static LinkBasis untried(ChainWish wish) {
    Maker hands = Planning.maker(wish);
    return new LinkBasis(hands, false, FormersOwned.of(wish, hands));
  }

  /** The same, following those pieces. */
  public LinkBasis following(
      Optional<MeasuredLink> link, Map<String, MeasuredLink> samples, Optional<HungMean> mean) {
    return new LinkBasis(hands, taught, ownedMm, link, samples, mean);
  }

  /** What the same hands know of another link of the chain, with its wish alone. */
  public LinkBasis of(String other, ChainWish alone) {
    return new LinkBasis(
        hands,
        taught,
        FormersOwned.of(alone, hands),
        Optional.ofNullable(others.get(other)),
        Map.of(),
        Optional.empty());
  }

  /** Links of the hung length that is followed; 0 without one. */
  int hungLinks() {
    return hung.map(HungMean::links).or(() -> followed.map(MeasuredLink::hungLinks)).orElse(0);
  }
}
