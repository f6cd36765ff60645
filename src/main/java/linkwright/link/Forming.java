package linkwright.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Read;

/**
 * Forms a blank to a pattern.
 *
 * <p>Each bend keeps the length of its centre line, whose radius is (D + d)/2 with the winding
 * clearance, sprung back by the wire's stress; {@code run: rest} takes what is left of the blank.
 * The line of pull joins the two eyes' centres of curvature, each taken at the end of its bend
 * nearer the middle of the blank.
 */
public final class Forming {
  /** Half of the last digit that a blank is read and written to: 0.01 mm. */
  private static final double SLACK_MM = 0.005;

  private Forming() {}

  /**
   * The link that comes of a blank, or a sentence that says what is wrong: a size that is zero or
   * below, a wire thicker than a former, a blank too short (with the shortest that works), a fault
   * of the pattern.
   *
   * @param pattern what to form
   * @param wireMm the wire's diameter in millimetres, above 0
   * @param blankMm the blank's length in millimetres, above 0
   * @param formersMm inside diameters in millimetres that replace the pattern's by name
   * @param hand what the maker adds; {@link Bending#TRUE} for a pattern formed exactly
   */
  public static Read<Formed> form(
      Pattern pattern, double wireMm, double blankMm, Map<String, Double> formersMm, Bending hand) {
    List<PatternCheck.PatternFault> findings = PatternCheck.of(pattern);
    if (!findings.isEmpty()) {
      return Read.bad(findings.get(0).sentence());
    }
    Optional<String> fault =
        SizeFault.first(
            SizeFault.faultUnlessPositive("The wire", wireMm),
            SizeFault.faultUnlessPositive("The blank", blankMm));
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    List<PatternPart> bits = TipToTip.whole(pattern);
    Read<Radii> radii = Radii.of(pattern, bits, wireMm, formersMm, hand);
    return radii.flatMap(found -> form(pattern, bits, wireMm, blankMm, hand, found));
  }

  private static Read<Formed> form(
      Pattern pattern,
      List<PatternPart> bits,
      double wireMm,
      double blankMm,
      Bending hand,
      Radii radii) {
    double fixedMm = 0;
    int shares = 0;
    for (int at = 0; at < bits.size(); at++) {
      if (bits.get(at) instanceof Run run && run.mm().isEmpty()) {
        shares++;
      } else {
        fixedMm += radii.lengthMm(at);
      }
    }
    double shortestMm = Math.max(0, fixedMm + hand.lostMm());
    double leftMm = blankMm - hand.lostMm() - fixedMm;
    if (!(leftMm >= -SLACK_MM)) {
      return Read.bad(tooShort(pattern, blankMm, shortestMm));
    }
    double restMm = shares == 0 ? 0 : Math.max(0, leftMm) / shares;
    List<Stretch> walked = walk(bits, radii, restMm);
    double surplusMm = shares == 0 ? leftMm : 0;
    return Pulled.of(walked, bits, wireMm)
        .map(pulled -> new Formed(pattern, bits, wireMm, shortestMm, surplusMm, pulled));
  }

  private static List<Stretch> walk(List<PatternPart> bits, Radii radii, double restMm) {
    List<Stretch> walked = new ArrayList<>(bits.size());
    double along = 0;
    double heading = 0;
    Point at = new Point(0, 0);
    for (int bit = 0; bit < bits.size(); bit++) {
      boolean rests = bits.get(bit) instanceof Run run && run.mm().isEmpty();
      Stretch next = radii.stretch(bit, along, at, heading, rests ? restMm : radii.lengthMm(bit));
      walked.add(next);
      along = next.toMm();
      heading = next.endHeading();
      at = next.end();
    }
    return walked;
  }

  private static String tooShort(Pattern pattern, double blankMm, double shortestMm) {
    return "A blank of "
        + Sizes.mm(blankMm)
        + " is too short for the bends of \""
        + pattern.id()
        + "\": the shortest that works is "
        + Sizes.atLeastMm(shortestMm)
        + ", or take smaller formers.";
  }
}
