package linkwright.cutting;

/**
 * Blanks of one length that are wanted.
 *
 * @param mm length of one blank, without the kerf
 * @param wanted how many
 */
public record BlankWish(double mm, int wanted) {}
