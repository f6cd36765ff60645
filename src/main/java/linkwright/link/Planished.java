package linkwright.link;

/**
 * A link hammered thinner. The wire keeps its area: w = πd²/(4t) for a wire d planished to t, taken
 * as spreading evenly to both sides of its centre line, so that the inside length loses w, not d. A
 * first estimate: the finished inside length is measured on the trial length. Source: constancy of
 * volume; the strip's section taken as a rectangle.
 *
 * @param thicknessMm what it was planished to, in millimetres
 * @param wireWidthMm how wide the wire becomes, in millimetres
 * @param roundEdgesWidthMm how wide it becomes where its edges stay half round, t + π(d² −
 *     t²)/(4t), in millimetres
 * @param lengthMm the extent along the pull, in millimetres
 * @param widthMm the extent across the pull, in millimetres
 * @param insideLengthMm what the link adds to the chain, in millimetres
 */
public record Planished(
    double thicknessMm,
    double wireWidthMm,
    double roundEdgesWidthMm,
    double lengthMm,
    double widthMm,
    double insideLengthMm) {

  /**
   * @throws IllegalArgumentException if the thickness is not above 0 and at most the wire's
   */
  static Planished of(Formed link, double thicknessMm) {
    double wireMm = link.wireMm();
    if (!(thicknessMm > 0 && thicknessMm <= wireMm)) {
      throw new IllegalArgumentException(
          "thicknessMm must be above 0 and at most " + wireMm + ": " + thicknessMm);
    }
    // At t = d nothing was hammered: the round wire is still d wide, not πd/4.
    double wide = Math.max(wireMm, Math.PI * wireMm * wireMm / (4 * thicknessMm));
    double spread = wide - wireMm;
    return new Planished(
        thicknessMm,
        wide,
        thicknessMm + Math.PI * (wireMm * wireMm - thicknessMm * thicknessMm) / (4 * thicknessMm),
        link.lengthMm() + spread,
        link.widthMm() + spread,
        link.insideLengthMm() - spread);
  }
}
