package linkwright.link;

/**
 * What a maker's hands and wire add to a pattern.
 *
 * @param growth how many times its true radius (D + d)/2 each bend's centre line comes out, more
 *     than 0; springback makes it a little more than 1
 * @param lostMm how much of the blank is lost to filing and tips, in millimetres; negative where
 *     the blank comes out long
 * @param extraTurnDeg how many degrees more than the pattern says each eye is turned; without
 *     meaning for a closed pattern, whose tips have to meet
 */
public record Bending(double growth, double lostMm, double extraTurnDeg) {
  /** Bends true to their formers, nothing lost, the eyes turned as the pattern says. */
  public static final Bending TRUE = new Bending(1, 0, 0);

  /**
   * @throws IllegalArgumentException if growth is not a finite number above 0, or another is not
   *     finite
   */
  public Bending {
    if (!(growth > 0 && Double.isFinite(growth))) {
      throw new IllegalArgumentException("growth must be more than 0: " + growth);
    }
    if (!Double.isFinite(lostMm)) {
      throw new IllegalArgumentException("lostMm must be finite: " + lostMm);
    }
    if (!Double.isFinite(extraTurnDeg)) {
      throw new IllegalArgumentException("extraTurnDeg must be finite: " + extraTurnDeg);
    }
  }
}
