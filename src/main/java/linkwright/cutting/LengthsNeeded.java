package linkwright.cutting;

/**
 * How many equal lengths a set of blanks takes.
 *
 * @param possible false when some blank is longer than a length, so that no number will do
 * @param lengths the fewest lengths found; 0 when not possible or nothing is wanted
 * @param proved whether fewer cannot do
 */
public record LengthsNeeded(boolean possible, int lengths, boolean proved) {}
