package linkwright.plan;

import linkwright.wire.WireMass;

/**
 * The links of one size of a chain.
 *
 * @param name what they are called; empty where all links are alike
 * @param perRepeat how many one repeat of the chain takes
 * @param links how many the chain takes
 * @param toCut blanks so that enough come good with the wished chance
 * @param link the link as it is counted
 * @param massG those of the chain, g
 */
public record LinksOfSize(
    String name, int perRepeat, int links, int toCut, SettledLink link, double massG) {

  static LinksOfSize of(
      ChainWish wish, String name, int perRepeat, int links, int toCut, SettledLink link) {
    double massG =
        WireMass.grams(
            wish.wireAreaMm2(), links * link.blankMm(), wish.metal().densityGCm3().value());
    return new LinksOfSize(name, perRepeat, links, toCut, link, massG);
  }

  /** Wire that all of them take, spares included, mm. */
  public double wireMm(ChainWish wish) {
    return toCut * eachMm(wish);
  }

  /** Wire that one blank takes with its kerf, mm. */
  public double eachMm(ChainWish wish) {
    return link.blankMm() + wish.kerfMm();
  }
}
