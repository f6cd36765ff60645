package linkwright.fit;

/**
 * What is known of the hands that bend: three numbers and their uncertainty.
 *
 * @param growth by how much a bend's centre line is larger than the former says; above 0
 * @param lostMm wire of each blank that does not come out in the link (filed, nipped off, crushed)
 * @param extraTurnDeg how much further than the pattern's an eye is turned; negative if less
 * @param covariance how uncertain these are
 */
public record Maker(double growth, double lostMm, double extraTurnDeg, Covariance covariance) {
  /** How far one maker's growth differs from what springback says: one standard deviation. */
  public static final double USUAL_GROWTH_SPREAD = 0.03;

  /** How much wire is lost, give or take: one standard deviation. */
  public static final double USUAL_LOST_SPREAD_MM = 0.5;

  /** How far one maker's eyes are turned beyond another's: one standard deviation. */
  public static final double USUAL_TURN_SPREAD_DEG = 12;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not finite, or the growth is not above 0
   */
  public Maker {
    Checks.positive("growth", growth);
    Checks.finite("lostMm", lostMm);
    Checks.finite("extraTurnDeg", extraTurnDeg);
  }

  /**
   * A maker of whom nothing is known yet. The spreads are this program's choice.
   *
   * @param growth what springback says of the wire: the ratio of the centre line's radius after
   *     springback to the one on the former, with the stress at the mean of yield and tensile
   *     strength, for wire hardens as it bends
   */
  public static Maker unknown(double growth) {
    return new Maker(
        growth,
        0,
        0,
        Covariance.ofSpreads(USUAL_GROWTH_SPREAD, USUAL_LOST_SPREAD_MM, USUAL_TURN_SPREAD_DEG));
  }

  /** Standard deviation of the growth. */
  public double growthSpread() {
    return Math.sqrt(covariance.growthGrowth());
  }

  /** Standard deviation of the lost wire, in millimetres. */
  public double lostSpreadMm() {
    return Math.sqrt(covariance.lostLost());
  }

  /** Standard deviation of the extra turn, in degrees. */
  public double extraTurnSpreadDeg() {
    return Math.sqrt(covariance.turnTurn());
  }

  /** The maker at so many standard deviations along the columns of a root of the covariance. */
  Maker at(double[][] root, double[] z) {
    double[] moved = {growth, lostMm, extraTurnDeg};
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k <= i; k++) {
        moved[i] += root[i][k] * z[k];
      }
    }
    // A radius cannot vanish; a wild guess is held where a bend is still a bend.
    return new Maker(Math.max(0.2, moved[0]), moved[1], moved[2], covariance);
  }

  /** The same hands with the eyes turned further. */
  Maker turned(double moreDeg) {
    return new Maker(growth, lostMm, extraTurnDeg + moreDeg, covariance);
  }
}
