package linkwright.wire;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far round wire opens again when it comes off its former: elastic, perfectly plastic bending.
 *
 * <p>With the centre line's radius R = (D + d)/2 and curvature κ = 1/R the elastic core reaches to
 * c = σ/(Eκ) from the middle. If c ≥ d/2 the wire was only bent like a spring and goes straight
 * again. Otherwise the bending moment is M = ∫σ·y·dA and κ_f = κ − M/(EI), I = πd⁴/64.
 *
 * <p>Not reliable for a former thinner than the wire: the theory of thin bars is stretched there,
 * and wire hardens as it is bent; a test piece knows better.
 *
 * <p>Source: Timoshenko, Strength of Materials, part II, on bending beyond the elastic limit (from
 * memory); shape factor of a round bar 16/(3π).
 */
public final class Springback {
  private static final int HALVINGS = 200;

  private Springback() {}

  /**
   * Inside diameter of a turn after it has sprung back.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param formerMm diameter of the former, mm, above 0
   * @param modulusMpa Young's modulus, MPa, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return mm, never below the former; empty if the wire springs back whole
   * @throws IllegalArgumentException if an argument is out of its domain
   */
  public static OptionalDouble insideMm(
      double wireMm, double formerMm, double modulusMpa, double yieldMpa) {
    OptionalDouble growth = growth(wireMm, formerMm, modulusMpa, yieldMpa);
    return growth.isEmpty()
        ? growth
        : OptionalDouble.of(growth.getAsDouble() * (formerMm + wireMm) - wireMm);
  }

  /**
   * Ratio of the centre line's radius after springing back to the one on the former.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param formerMm diameter of the former, mm, above 0
   * @param modulusMpa Young's modulus, MPa, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return 1 or more; empty if the wire springs back whole
   * @throws IllegalArgumentException if an argument is out of its domain
   */
  public static OptionalDouble growth(
      double wireMm, double formerMm, double modulusMpa, double yieldMpa) {
    Domain.above0("formerMm", formerMm);
    Domain.above0("wireMm", wireMm);
    Domain.above0("modulusMpa", modulusMpa);
    Domain.above0("yieldMpa", yieldMpa);
    return growthAt((formerMm + wireMm) / 2, wireMm, yieldMpa / modulusMpa);
  }

  /**
   * The former that leaves a wished inside diameter after springing back: the inverse of {@link
   * #insideMm}, by halving the interval.
   *
   * @param insideMm wished inside diameter, mm, above 0
   * @param wireMm diameter of the wire, mm, above 0
   * @param modulusMpa Young's modulus, MPa, above 0
   * @param yieldMpa yield stress, MPa, above 0
   * @return mm, above 0; empty if the wire springs back farther from any former
   * @throws IllegalArgumentException if an argument is out of its domain
   */
  public static OptionalDouble formerFor(
      double insideMm, double wireMm, double modulusMpa, double yieldMpa) {
    Domain.above0("insideMm", insideMm);
    Domain.above0("wireMm", wireMm);
    Domain.above0("modulusMpa", modulusMpa);
    Domain.above0("yieldMpa", yieldMpa);
    double wished = (insideMm + wireMm) / 2;
    double tight = wireMm / 2;
    double wide = wished;
    if (opensBeyond(wished, tight, wireMm, modulusMpa, yieldMpa)) {
      return OptionalDouble.empty();
    }
    for (int i = 0; i < HALVINGS && tight < wide; i++) {
      double middle = tight + (wide - tight) / 2;
      if (opensBeyond(wished, middle, wireMm, modulusMpa, yieldMpa)) {
        wide = middle;
      } else {
        tight = middle;
      }
    }
    double formerMm = 2 * wide - wireMm;
    return formerMm > 0 ? OptionalDouble.of(formerMm) : OptionalDouble.empty();
  }

  /**
   * The bending moment over the one at which the outermost fibre begins to yield.
   *
   * <p>Closed form of ∫σ·y·dA for a circle: with s = c/r and θ = asin s, M/M_y = (2/(πs))·(θ −
   * sin(4θ)/4) + (16/(3π))·(1 − s²)^1.5.
   *
   * @param bentShare κ/κ_y, how many times the curvature is that at which yielding begins, not
   *     below 0
   * @return M/M_y: as bentShare up to 1, then rising to the shape factor 16/(3π)
   * @throws IllegalArgumentException if the argument is below 0 or no number
   */
  public static double momentRatio(double bentShare) {
    Domain.notBelow0("bentShare", bentShare);
    if (bentShare <= 1) {
      return bentShare;
    }
    double s = 1 / bentShare;
    double theta = Math.asin(s);
    double core = s < 1e-3 ? 16 * s * s / (3 * Math.PI) : coreTerm(s, theta);
    return core + 16 / (3 * Math.PI) * Math.pow(1 - s * s, 1.5);
  }

  /** What to mind when wire is bent over a former thinner than itself; empty otherwise. */
  public static Optional<String> caution(double wireMm, double formerMm) {
    Domain.above0("wireMm", wireMm);
    Domain.above0("formerMm", formerMm);
    if (wireMm <= formerMm) {
      return Optional.empty();
    }
    long percent = Math.round(100 * wireMm / (wireMm + formerMm));
    return Optional.of(
        "The wire is thicker than its former: its outside stretches by about "
            + percent
            + " % and may crack. Anneal it first, and take the size from a test piece.");
  }

  private static double coreTerm(double s, double theta) {
    return 2 / (Math.PI * s) * (theta - Math.sin(4 * theta) / 4);
  }

  private static boolean opensBeyond(
      double wishedRadius, double radius, double wireMm, double modulusMpa, double yieldMpa) {
    OptionalDouble growth = growthAt(radius, wireMm, yieldMpa / modulusMpa);
    return growth.isEmpty() || growth.getAsDouble() * radius > wishedRadius;
  }

  /**
   * Ratio of the centre line's radius after springing back to the one before, for wire that gives
   * way at a share of its modulus.
   *
   * @param radiusMm radius of the centre line on the former, mm, above 0
   * @param wireMm diameter of the wire, mm, above 0
   * @param stressShare stress over modulus, not below 0; 0 for no springback
   * @return 1 or more; empty if the wire springs back whole
   * @throws IllegalArgumentException if an argument is out of its domain
   */
  public static OptionalDouble growthAt(double radiusMm, double wireMm, double stressShare) {
    Domain.above0("radiusMm", radiusMm);
    Domain.above0("wireMm", wireMm);
    if (!(stressShare >= 0)) {
      throw new IllegalArgumentException("stressShare must not be below 0, not " + stressShare);
    }
    double yieldCurvature = 2 * stressShare / wireMm;
    double bentShare = 1 / (radiusMm * yieldCurvature);
    if (!(bentShare > 1)) {
      return OptionalDouble.empty();
    }
    // A curvature beyond all numbers means a yield stress next to nothing: no springback at all.
    double kept = bentShare > 1e15 ? 1 : 1 - momentRatio(bentShare) / bentShare;
    return kept > 0 ? OptionalDouble.of(1 / kept) : OptionalDouble.empty();
  }
}
