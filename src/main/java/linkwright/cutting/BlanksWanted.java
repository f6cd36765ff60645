package linkwright.cutting;

/**
 * Blanks of one length that are wanted.
 *
 * @param mm length of one blank, without the kerf
 * @param wanted how many
 * @param perRepeat how many of them one repeat of the chain takes, 1 or more
 */
public record BlanksWanted(double mm, int wanted, int perRepeat) {

  /** Blanks of links that come one to a repeat. */
  public static BlanksWanted each(double mm, int wanted) {
    return new BlanksWanted(mm, wanted, 1);
  }
}
