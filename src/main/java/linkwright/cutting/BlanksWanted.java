package linkwright.cutting;

/**
 * Blanks of one length that are wanted.
 *
 * @param mm length of one blank, without the kerf
 * @param wanted how many
 * @param perRepeat how many of them one repeat of the chain takes, 1 or more
 * @param spare how many of those wanted are spare, which are let go before any of the chain's own
 */
public record BlanksWanted(double mm, int wanted, int perRepeat, int spare) {

  /** Blanks of links that come one to a repeat. */
  public static BlanksWanted each(double mm, int wanted) {
    return new BlanksWanted(mm, wanted, 1, 0);
  }
}
