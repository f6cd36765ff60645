package linkwright.fit;

import linkwright.link.Bending;

/**
 * What is known of the hands that bend: four numbers and their uncertainty, and how much their
 * pieces differ from each other.
 *
 * <p>The stress belongs to the metal's batch, the rest to the hands.
 *
 * @param bending the numbers that are most likely
 * @param covariance how uncertain these are
 * @param scatter how her pieces differ
 */
public record Maker(Bending bending, Covariance covariance, Scatter scatter) {
  /** How far one batch's stress differs from what the metal says, as a share of it. */
  public static final double USUAL_STRESS_SPREAD = 0.25;

  /** How far one maker's winding differs from another's, as a share of the wire's thickness. */
  public static final double USUAL_CLEARANCE_SPREAD = 0.07;

  /** How much wire is lost, give or take: one standard deviation. */
  public static final double USUAL_LOST_SPREAD_MM = 0.5;

  /** How far one maker's eyes are turned beyond another's: one standard deviation. */
  public static final double USUAL_TURN_SPREAD_DEG = 12;

  /**
   * A maker of whom nothing is known yet. The spreads are this program's choice.
   *
   * @param stressShare the stress to reckon bending with over the modulus, 0 or more: at the mean
   *     of yield and tensile strength, for wire hardens as it bends
   */
  public static Maker unknown(double stressShare) {
    return new Maker(
        Bending.springing(stressShare),
        Covariance.ofSpreads(
            USUAL_STRESS_SPREAD * stressShare,
            USUAL_CLEARANCE_SPREAD,
            USUAL_LOST_SPREAD_MM,
            USUAL_TURN_SPREAD_DEG),
        Scatter.USUAL);
  }

  /** The same hands, of which all is certain but how one piece differs from the next. */
  public Maker certain() {
    return new Maker(bending, Covariance.ofSpreads(0, 0, 0, 0), scatter);
  }

  /** Standard deviation of the lost wire, in millimetres. */
  public double lostSpreadMm() {
    return Math.sqrt(covariance.at(2, 2));
  }

  /** Standard deviation of the extra turn, in degrees. */
  public double extraTurnSpreadDeg() {
    return Math.sqrt(covariance.at(3, 3));
  }

  /** The maker at so many standard deviations along the columns of a root of the covariance. */
  Maker at(double[][] root, double[] z) {
    double[] moved = new double[Covariance.SIZE];
    for (int i = 0; i < moved.length; i++) {
      moved[i] = Triangle.dot(root[i], z);
    }
    return moved(moved[0], moved[1], moved[2], moved[3]);
  }

  /** The same with other numbers; stress is never less than none. */
  Maker moved(double stressShare, double clearanceShare, double lostMm, double turnDeg) {
    return new Maker(
        new Bending(
            Math.max(0, bending.stressShare() + stressShare),
            bending.clearanceShare() + clearanceShare,
            bending.lostMm() + lostMm,
            bending.extraTurnDeg() + turnDeg),
        covariance,
        scatter);
  }
}
