package linkwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
 * @param noneOfHers whether the pattern's own formers are taken because none of her bench makes the
 *     link
 */
public record LinkBasis(
    Maker hands,
    boolean taught,
    Map<String, List<Double>> ownedMm,
    Optional<MeasuredLink> followed,
    Map<String, MeasuredLink> others,
    Optional<HungMean> hung,
    boolean noneOfHers) {
  /** So many choices of her formers are tried one by one. */
  private static final int MOST_TRIED = 16;

  public LinkBasis {
    ownedMm = Map.copyOf(ownedMm);
    others = Map.copyOf(others);
  }

  /** What is known of the link with no piece followed. */
  public LinkBasis(Maker hands, boolean taught, Map<String, List<Double>> ownedMm) {
    this(hands, taught, ownedMm, Optional.empty(), Map.of(), Optional.empty(), false);
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
    return new LinkBasis(hands, taught, ownedMm, link, samples, mean, noneOfHers);
  }

  /** What the same hands know of another link of the chain, with its wish alone. */
  public LinkBasis of(String other, ChainWish alone) {
    return new LinkBasis(
        hands,
        taught,
        FormersOwned.of(alone, hands),
        Optional.ofNullable(others.get(other)),
        Map.of(),
        Optional.empty(),
        false);
  }

  /**
   * Over formers that make the link where the likeliest of her bench do not: others of hers, else
   * the pattern's own, else any that do, else the pattern's own.
   *
   * @param own the same over the pattern's own
   */
  public Optional<LinkBasis> otherwise(LinkBasis own, ChainWish wish) {
    Optional<LinkBasis> hers =
        oneEach().stream()
            .map(sizes -> over(sizes, false))
            .filter(each -> each.makes(wish))
            .findFirst();
    return hers.or(() -> noneOfHers(own, wish));
  }

  private Optional<LinkBasis> noneOfHers(LinkBasis own, ChainWish wish) {
    Optional<Map<String, List<Double>>> better =
        own.makes(wish)
            ? Optional.of(own.ownedMm())
            : new LinkSettling(wish, this)
                .instead()
                .map(
                    sizes -> {
                      Map<String, List<Double>> one = new LinkedHashMap<>();
                      sizes.forEach((name, mm) -> one.put(name, List.of(mm)));
                      return one;
                    });
    return Optional.of(over(better.orElse(own.ownedMm()), true));
  }

  private LinkBasis over(Map<String, List<Double>> sizes, boolean none) {
    return new LinkBasis(hands, taught, sizes, followed, others, hung, none);
  }

  /** Choices of one size for each former, the first sizes first; not more than are soon tried. */
  private List<Map<String, List<Double>>> oneEach() {
    List<Map<String, List<Double>>> choices = List.of(Map.of());
    for (Map.Entry<String, List<Double>> former : ownedMm.entrySet()) {
      List<Map<String, List<Double>>> longer = new ArrayList<>();
      for (double mm : former.getValue()) {
        for (Map<String, List<Double>> begun : choices) {
          Map<String, List<Double>> choice = new LinkedHashMap<>(begun);
          choice.put(former.getKey(), List.of(mm));
          longer.add(choice);
        }
      }
      choices = longer.subList(0, Math.min(longer.size(), MOST_TRIED));
    }
    return choices;
  }

  /** Whether the wished link comes of those formers; where no length is wished, of any. */
  public boolean makes(ChainWish wish) {
    return new LinkSettling(wish, this).reaches();
  }

  /** Links of the hung length that is followed; 0 without one. */
  int hungLinks() {
    return hung.map(HungMean::links).or(() -> followed.map(MeasuredLink::hungLinks)).orElse(0);
  }
}
