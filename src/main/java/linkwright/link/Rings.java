package linkwright.link;

/** What rings take of wire, as bare formulas; {@link Ring} and {@link Coil} check their sizes. */
public final class Rings {
  private Rings() {}

  /**
   * π(D + d): the blank of a ring.
   *
   * @param insideMm D, in millimetres, above 0
   * @param wireMm d, in millimetres, above 0
   * @return millimetres
   * @throws IllegalArgumentException if a size is not a finite number above 0
   */
  public static double blankMm(double insideMm, double wireMm) {
    if (!(insideMm > 0 && wireMm > 0 && Double.isFinite(insideMm + wireMm))) {
      throw new IllegalArgumentException(
          "insideMm and wireMm must be more than 0: " + insideMm + ", " + wireMm);
    }
    return Math.PI * (insideMm + wireMm);
  }

  /**
   * √((π(D + d))² + p²): one turn of a coil that is wound close, so that its pitch p is as wide as
   * its wire.
   *
   * @param insideMm D, the coil's own inside diameter, in millimetres, above 0
   * @param neutralMm d, as in {@link Ring}, in millimetres, above 0
   * @param besideMm p, in millimetres, above 0
   * @return millimetres
   * @throws IllegalArgumentException if a size is not a finite number above 0
   */
  public static double turnMm(double insideMm, double neutralMm, double besideMm) {
    return Math.hypot(blankMm(insideMm, neutralMm), besideMm);
  }

  /**
   * Whether a ring holds two wires of its neighbours at once, as every ring of a chain does: they
   * lie side by side along the pull, and one passes across.
   *
   * @param alongMm the ring's inside length along the pull, in millimetres
   * @param acrossMm its inside width, in millimetres; the same for a round one
   * @param wireMm the neighbours' wire, in millimetres
   */
  public static boolean passesTwo(double alongMm, double acrossMm, double wireMm) {
    return alongMm > 2 * wireMm && acrossMm > wireMm;
  }
}
