package linkwright.cutting;

/**
 * Rings that are wanted, wound as coils and cut off. The kerf between ring and ring lies inside the
 * turn. The cut that frees the coil goes through its tail, and takes what the tail is short of a
 * kerf from the wire behind it.
 *
 * @param turnMm wire that one turn of the coil takes, with its kerf
 * @param tailMm wire by which each coil is held, lost to the rings
 * @param wanted how many rings
 * @param perRepeat how many of them one repeat of the chain takes, 1 or more
 * @param spare how many of those wanted are spare, which are let go before any of the chain's own
 */
public record RingsWanted(double turnMm, double tailMm, int wanted, int perRepeat, int spare) {

  /** Rings that come one to a repeat, as where each joins link to link. */
  public static RingsWanted each(double turnMm, double tailMm, int wanted) {
    return new RingsWanted(turnMm, tailMm, wanted, 1, 0);
  }

  /** Wire of one coil of so many rings, tail included, mm. */
  double coilMm(int rings) {
    return rings * turnMm + tailMm;
  }
}
