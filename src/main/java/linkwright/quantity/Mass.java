package linkwright.quantity;

/**
 * A mass, called weight at the bench.
 *
 * @param grams grams, finite and not negative
 */
public record Mass(double grams) {
  /** A tonne: more metal than any bench holds. */
  private static final double MOST_G = 1e6;

  private static final String EXAMPLE = "9.4 g";

  /** A mass below nothing, or none at all, is the programmer's fault. */
  public Mass {
    if (!(grams >= 0 && grams <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("grams must be finite and not negative, not " + grams);
    }
  }

  /**
   * Reads a mass with its unit: g, mg, kg, dwt (pennyweight), ozt (troy ounce), gr (grain), oz
   * (avoirdupois ounce), ct (carat).
   */
  public static Read<Mass> read(String typed) {
    return Written.read(typed, EXAMPLE)
        .flatMap(written -> written.in(Unit.OF_MASS, Unit.MASS, EXAMPLE))
        .flatMap(grams -> Written.withinReason(grams, typed, "A weight", MOST_G))
        .map(Mass::new);
  }
}
