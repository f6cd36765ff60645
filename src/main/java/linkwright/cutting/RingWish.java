package linkwright.cutting;

/**
 * Rings that are wanted, wound as coils and sawn off. A coil of r rings takes r × {@code turnMm} +
 * {@code tailMm} of one stock length; the saw's kerf lies inside the turn, and the cut that frees
 * the coil falls in its tail, so neither costs more.
 *
 * @param turnMm wire that one turn of the coil takes
 * @param tailMm wire by which each coil is held, lost to the rings
 * @param wanted how many rings
 * @param perLink rings that each further link takes; 1 where a ring joins link to link
 * @param ends rings beyond those: 1 where the chain has a ring at both ends
 */
public record RingWish(double turnMm, double tailMm, int wanted, int perLink, int ends) {

  /** Rings that join links one by one with a ring at each end: n links take n + 1. */
  public static RingWish atBothEnds(double turnMm, double tailMm, int wanted) {
    return new RingWish(turnMm, tailMm, wanted, 1, 1);
  }
}
