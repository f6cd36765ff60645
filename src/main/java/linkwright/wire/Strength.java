package linkwright.wire;

import java.util.Comparator;
import java.util.List;
import linkwright.reference.Metal;
import linkwright.reference.Temper;

/**
 * What a ring of round wire holds when it is pulled, by plastic hinges.
 *
 * <p>The fully plastic moment of round wire is M_p = σd³/6, its lever the half of the centre line's
 * width across the pull: (w + d)/2, in a round ring the radius R = (D + d)/2. These are collapse
 * loads: at its load a soldered ring is drawn long, it does not break. Reliable for rings clearly
 * wider than their wire; the pull in the wire itself and hardening are left out. {@link #PROVISO}.
 *
 * <p>Source: the plastic hinge argument of any text on plastic design, such as Baker, Horne and
 * Heyman, The Steel Skeleton, volume 2 (from memory); worked through in the tests.
 */
public final class Strength {
  /** What stands beside every load that is shown, and is never left out. */
  public static final String PROVISO = "For comparing only: nobody's safety may hang on it.";

  private Strength() {}

  /**
   * Pull at which a butted ring opens, or an eye that is not soldered: M_p over its lever.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param insideMm inside width across the pull, the diameter of a round one, mm, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return N, above 0
   * @throws IllegalArgumentException if an argument is out of its domain or the pull overflows
   */
  public static double buttedN(double wireMm, double insideMm, double yieldMpa) {
    Domain.above0("wireMm", wireMm);
    Domain.above0("insideMm", insideMm);
    Domain.above0("yieldMpa", yieldMpa);
    double plasticMoment = yieldMpa * wireMm * wireMm * wireMm / 6;
    return Domain.result("pull", plasticMoment / ((insideMm + wireMm) / 2));
  }

  /**
   * The same of wire of any section, bent over its flat side; of round wire it is the same.
   *
   * @param wire the wire
   * @param insideMm inside width across the pull, mm, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return N, above 0
   */
  public static double buttedN(WireSection wire, double insideMm, double yieldMpa) {
    Domain.above0("insideMm", insideMm);
    Domain.above0("yieldMpa", yieldMpa);
    return Domain.result(
        "pull", yieldMpa * wire.plasticMm3() / (insideMm / 2 + wire.middleMm()));
  }

  /**
   * Pull at which a soldered ring of wire of any section is drawn long, N: four times as much, see
   * the one of round wire.
   */
  public static double solderedN(WireSection wire, double insideMm, double yieldMpa) {
    return Domain.result("pull", 4 * buttedN(wire, insideMm, yieldMpa));
  }

  /**
   * Pull at which a soldered ring is drawn long: 4M_p over its lever, with hinges at the two ends
   * and the two sides.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param insideMm inside width across the pull, the diameter of a round one, mm, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return N, above 0
   * @throws IllegalArgumentException if an argument is out of its domain or the pull overflows
   */
  public static double solderedN(double wireMm, double insideMm, double yieldMpa) {
    return Domain.result("pull", 4 * buttedN(wireMm, insideMm, yieldMpa));
  }

  /** The element of a chain that gives way first; of several alike the first in the list. */
  public static Element weakest(List<Element> elements) {
    return elements.stream()
        .min(Comparator.comparingDouble(Element::collapseN))
        .orElseThrow(() -> new IllegalArgumentException("elements must not be empty"));
  }

  /**
   * How much more the inner fibre of a curved bar is stressed than that of a straight one bent by
   * the same moment.
   *
   * <p>Winkler's curved beam, round section of radius r about a centre line of radius R: the
   * neutral line at rₙ = (R + √(R² − r²))/2, K = (rₙ − R + r)·r/(4·(R − rₙ)·(R − r)).
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param radiusMm radius of the centre line, mm; no less than 0.55 of the wire is reckoned with
   * @return 1 or more. Source: Timoshenko, Strength of Materials, part II, curved bars (from
   *     memory)
   */
  public static double innerFibre(double wireMm, double radiusMm) {
    double r = Domain.above0("wireMm", wireMm) / 2;
    double curve = Math.max(Domain.above0("radiusMm", radiusMm), 1.1 * r);
    double root = Math.sqrt(curve * curve - r * r);
    // R − rₙ, without the difference of two numbers nearly alike.
    double shift = r * r / (2 * (curve + root));
    double inner = curve - r;
    return (r - shift) * r / (4 * shift * inner);
  }

  /**
   * One element of a chain as it is pulled: a ring, a ring squeezed to an oval, an eye.
   *
   * @param says what it is, in words: {@code ring}, {@code eye of the link, not soldered}
   * @param wireMm diameter of its wire, mm
   * @param acrossMm inside width across the pull, mm
   * @param alongMm inside length along the pull, mm
   * @param yieldMpa yield stress as worn, MPa
   * @param soldered whether the wire is one piece all round
   */
  public record Element(
      String says,
      double wireMm,
      double acrossMm,
      double alongMm,
      double yieldMpa,
      boolean soldered) {

    /**
     * An element of a metal. Soldering anneals: what is soldered holds as soft wire does, whatever
     * it was before; what is only closed as its own temper.
     */
    public static Element of(
        String says,
        double wireMm,
        double acrossMm,
        double alongMm,
        Metal metal,
        Temper temper,
        boolean soldered) {
      double yield = metal.yieldMpa(soldered ? Temper.SOFT : temper);
      return new Element(says, wireMm, acrossMm, alongMm, yield, soldered);
    }

    /** Pull at which it opens or is drawn long, N. */
    public double collapseN() {
      return soldered ? solderedN(wireMm, acrossMm, yieldMpa) : buttedN(wireMm, acrossMm, yieldMpa);
    }

    /**
     * Pull at which lasting set begins, N: where the inner fibre yields first.
     *
     * <p>Only closed, the whole pull bends the far side over half the width. Soldered, half the
     * pull goes down each side; the moments at ends and sides follow from ∫M ds = 0 round the
     * elastic ring, Pȳ/2 and P(b − ȳ)/2 with ȳ the mean height of the quarter's centre line; in a
     * round ring PR/π and PR(1/2 − 1/π). Source: Roark's Formulas for Stress and Strain, circular
     * rings (from memory). The pull in the wire itself is left out.
     */
    public double setN() {
      double b = (acrossMm + wireMm) / 2;
      double a = (alongMm + wireMm) / 2;
      double yieldMoment = yieldMpa * Math.PI * wireMm * wireMm * wireMm / 32;
      double side = innerFibre(wireMm, a * a / b);
      if (!soldered) {
        return yieldMoment / (b * side);
      }
      double mean = meanHeight(a, b);
      double end = innerFibre(wireMm, b * b / a);
      return yieldMoment / Math.max(mean / 2 * end, (b - mean) / 2 * side);
    }

    /** Mean distance from the line of pull along a quarter of an ellipse, by Simpson's rule. */
    private static double meanHeight(double a, double b) {
      int steps = 256;
      double height = 0;
      double length = 0;
      for (int i = 0; i <= steps; i++) {
        double angle = Math.PI / 2 * i / steps;
        double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
        double ds = weight * Math.hypot(a * Math.sin(angle), b * Math.cos(angle));
        length += ds;
        height += ds * b * Math.sin(angle);
      }
      return height / length;
    }
  }
}
