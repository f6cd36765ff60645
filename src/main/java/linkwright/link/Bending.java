package linkwright.link;

/**
 * What a maker's hands and wire add to a pattern.
 *
 * @param stressShare the stress at which the wire gives way while it is bent, as a share of its
 *     modulus, 0 or more; springback follows from it for every former by itself. 0 for none
 * @param clearanceShare how far the wire stands off its former, as a share of its own thickness;
 *     negative where it is drawn into it
 * @param lostMm how much of the blank is lost to filing and tips, in millimetres; negative where
 *     the blank comes out long
 * @param extraTurnDeg how many degrees more than the pattern says each eye is turned; without
 *     meaning for a closed pattern, whose tips have to meet
 */
public record Bending(
    double stressShare, double clearanceShare, double lostMm, double extraTurnDeg) {
  /** Bends true to their formers, nothing lost, the eyes turned as the pattern says. */
  public static final Bending TRUE = new Bending(0, 0, 0, 0);

  /**
   * @throws IllegalArgumentException if the stress is below 0, or a number is not finite
   */
  public Bending {
    if (!(stressShare >= 0 && Double.isFinite(stressShare))) {
      throw new IllegalArgumentException("stressShare must be 0 or more: " + stressShare);
    }
    finite("clearanceShare", clearanceShare);
    finite("lostMm", lostMm);
    finite("extraTurnDeg", extraTurnDeg);
  }

  /** Wire that springs back, in hands of which nothing more is known. */
  public static Bending springing(double stressShare) {
    return new Bending(stressShare, 0, 0, 0);
  }

  private static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite: " + value);
    }
  }
}
