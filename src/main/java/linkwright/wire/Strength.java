package linkwright.wire;

import java.util.Comparator;
import java.util.List;

/**
 * What a ring of round wire holds when it is pulled, by plastic hinges.
 *
 * <p>The fully plastic moment of round wire is M_p = σd³/6, the centre line's radius R = (D + d)/2.
 * These are collapse loads: at its load a soldered ring is drawn long, it does not break. Reliable
 * for rings clearly wider than their wire; the pull in the wire itself and hardening are left out.
 * For comparing and for warning, not for loads on which anybody's safety hangs.
 *
 * <p>Source: the plastic hinge argument of any text on plastic design, such as Baker, Horne and
 * Heyman, The Steel Skeleton, volume 2 (from memory); worked through in the tests.
 */
public final class Strength {
  /** Lasting set of a butted ring begins at this share of its collapse load: M_y/M_p = 3π/16. */
  public static final double BUTTED_SET_SHARE = 3 * Math.PI / 16;

  /**
   * Lasting set of a soldered ring begins at this share of its collapse load. The greatest moment
   * in an elastic ring is PR/π, so P_y = πM_y/R, against 4M_p/R: 3π²/64. Source: Roark's Formulas
   * for Stress and Strain, circular rings (from memory).
   */
  public static final double SOLDERED_SET_SHARE = 3 * Math.PI * Math.PI / 64;

  private Strength() {}

  /**
   * Pull at which a butted ring opens, or an eye that is not soldered: M_p/R.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param insideMm inside diameter, mm, above 0
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
   * Pull at which a soldered ring is drawn long: 4M_p/R, with hinges at the two ends and the two
   * sides.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param insideMm inside diameter, mm, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return N, above 0
   * @throws IllegalArgumentException if an argument is out of its domain or the pull overflows
   */
  public static double solderedN(double wireMm, double insideMm, double yieldMpa) {
    return Domain.result("pull", 4 * buttedN(wireMm, insideMm, yieldMpa));
  }

  /** The element of a chain that gives way first; of several alike the first in the list. */
  public static Held weakest(List<Held> elements) {
    return elements.stream()
        .min(Comparator.comparingDouble(Held::collapseN))
        .orElseThrow(() -> new IllegalArgumentException("elements must not be empty"));
  }

  /**
   * One element of a chain as it is pulled.
   *
   * @param says what it is, in words: {@code ring}, {@code eye of the link, not soldered}
   * @param wireMm diameter of its wire, mm
   * @param insideMm inside diameter where it is pulled, mm
   * @param yieldMpa yield stress as worn, MPa
   * @param soldered whether the wire is one piece all round
   */
  public record Held(
      String says, double wireMm, double insideMm, double yieldMpa, boolean soldered) {
    /** Pull at which it opens or is drawn long, N. */
    public double collapseN() {
      return soldered ? solderedN(wireMm, insideMm, yieldMpa) : buttedN(wireMm, insideMm, yieldMpa);
    }

    /** Pull at which lasting set begins, N. */
    public double setN() {
      return collapseN() * (soldered ? SOLDERED_SET_SHARE : BUTTED_SET_SHARE);
    }
  }
}
