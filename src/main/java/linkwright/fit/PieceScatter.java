package linkwright.fit;

/**
 * How one piece differs from the next in the same hands, seen in its length and width: each eye is
 * turned by hand, each blank cut by eye, each bend wound a little looser or tighter. The pattern
 * carries these over to the size. The figures are this program's choice; how much more or less a
 * maker's pieces really differ is learned ({@link Scatter}).
 *
 * @param turn what one standard deviation of the mean turn of the eyes does
 * @param cut what one standard deviation of the blank's length does
 * @param winding what one standard deviation of the winding does
 */
record PieceScatter(Change turn, Change cut, Change winding) {
  /** Standard deviation of the turn of one eye from piece to piece, in degrees. */
  static final double TURN_DEG = 4;

  /** Standard deviation of a blank cut by eye and ruler, in millimetres. */
  static final double CUT_MM = 0.15;

  /** Standard deviation of the winding, as a share of the wire's thickness. */
  static final double WINDING_SHARE = 0.01;

  /** Standard deviation of a reading with calipers, in millimetres. */
  static final double CALIPER_MM = 0.1;

  /** Standard deviation of a size judged by eye beside the wish, as a share of the wish. */
  static final double EYE_SHARE = 0.02;

  /** A change of a link's size. */
  record Change(double lengthMm, double widthMm) {}

  /** One standard deviation of the mean turn of so many eyes, in degrees. */
  static double meanTurnDeg(int eyes) {
    return TURN_DEG / Math.sqrt(Math.max(1, eyes));
  }

  /** One standard deviation of the length, all causes together. */
  double lengthMm() {
    return Math.sqrt(lengthSquare());
  }

  /** One standard deviation of the width, all causes together. */
  double widthMm() {
    return Math.sqrt(widthSquare());
  }

  double lengthSquare() {
    return square(turn.lengthMm) + square(cut.lengthMm) + square(winding.lengthMm);
  }

  double widthSquare() {
    return square(turn.widthMm) + square(cut.widthMm) + square(winding.widthMm);
  }

  double together() {
    return turn.lengthMm * turn.widthMm
        + cut.lengthMm * cut.widthMm
        + winding.lengthMm * winding.widthMm;
  }

  private static double square(double value) {
    return value * value;
  }
}
