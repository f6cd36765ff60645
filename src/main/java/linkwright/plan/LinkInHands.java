package linkwright.plan;

import java.util.List;
import java.util.Map;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.quantity.LastAnswers;
import linkwright.quantity.Read;

/** How a pattern's link comes out in given hands: its shape, and how sure its length is. */
public final class LinkInHands {
  private static final LastAnswers<Read<Formed>> FORMED = new LastAnswers<>(100);

  private LinkInHands() {}

  /**
   * The link that such hands bend from a blank.
   *
   * @param pattern the link's pattern
   * @param wireMm its wire, mm
   * @param hands whose hands
   * @param blankMm the blank, mm
   * @param formersMm formers in place of the pattern's own, mm
   * @return its shape, or a sentence that says why there is none
   */
  public static Read<Formed> form(
      Pattern pattern, double wireMm, Maker hands, double blankMm, Map<String, Double> formersMm) {
    return FORMED.of(
        List.of(pattern, wireMm, blankMm, formersMm, hands.bending()),
        () -> Forming.form(pattern, wireMm, blankMm, formersMm, hands.bending()));
  }

  /**
   * The doubt of such a link's length, one standard deviation each.
   *
   * @param commonMm what all links of these hands share, mm
   * @param pieceMm how one differs from the next, mm
   */
  record LengthSpread(double commonMm, double pieceMm) {}

  /** The doubt of a link's length; empty of meaning, and 0, where it cannot be formed. */
  static LengthSpread spread(
      Pattern pattern, double wireMm, Maker hands, double blankMm, Map<String, Double> formersMm) {
    double whole = spreadMm(pattern, wireMm, hands, blankMm, formersMm);
    double piece = spreadMm(pattern, wireMm, hands.certain(), blankMm, formersMm);
    return new LengthSpread(Math.sqrt(Math.max(0, whole * whole - piece * piece)), piece);
  }

  private static double spreadMm(
      Pattern pattern, double wireMm, Maker hands, double blankMm, Map<String, Double> formersMm) {
    return Fit.expect(pattern, wireMm, hands, blankMm, formersMm)
        .map(expected -> expected.lengthSpreadMm())
        .orElse(0.0);
  }
}
