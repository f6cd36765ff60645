package linkwright.fit;

/**
 * How one piece differs from the next in the same hands, seen in its length and width.
 *
 * <p>Each eye is turned by hand with a standard deviation of {@value #TURN_DEG}° of its own, so the
 * mean turn of n eyes varies by 4°/√n; the pattern's derivative carries that over. The figures are
 * this program's choice.
 *
 * @param lengthMm change of the length for one standard deviation of the mean turn
 * @param widthMm change of the width for the same
 */
record Noise(double lengthMm, double widthMm) {
  /** Standard deviation of the turn of one eye from piece to piece, in degrees. */
  static final double TURN_DEG = 4;

  /** Standard deviation of a reading with calipers, in millimetres. */
  static final double CALIPER_MM = 0.1;

  /** Standard deviation of a size judged by eye beside the wish, as a share of the wish. */
  static final double EYE_SHARE = 0.02;

  /** One standard deviation of the mean turn of so many eyes, in degrees. */
  static double meanTurnDeg(int eyes) {
    return TURN_DEG / Math.sqrt(Math.max(1, eyes));
  }
}
