package linkwright.quantity;

import java.util.Locale;

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
   * Reads a mass with its unit: g, mg, kg, dwt (pennyweight), ozt (troy ounce), gr (grain), oz av
   * (avoirdupois ounce), ct (carat). A bare oz can be either ounce and is asked about.
   */
  public static Read<Mass> read(String typed) {
    return Written.read(typed, EXAMPLE)
        .flatMap(
            written ->
                eitherOunce(written)
                    ? Read.bad(twoOunces(written))
                    : written.in(Unit.OF_MASS, Unit.MASS, EXAMPLE))
        .flatMap(grams -> Written.withinReason(grams, typed, "A weight", MOST_G))
        .map(Mass::new);
  }

  /** Whether it is a weight in ounces that does not say which. */
  public static boolean inEitherOunce(String typed) {
    return Written.read(typed, EXAMPLE).map(Mass::eitherOunce).found().orElse(false);
  }

  private static boolean eitherOunce(Written written) {
    return Unit.EITHER_OUNCE.contains(written.rest().strip().toLowerCase(Locale.ROOT));
  }

  private static String twoOunces(Written written) {
    return Written.quoted(written.digits() + " " + written.rest())
        + " can be read in two ways: "
        + reading(written, "ozt")
        + " as troy ounces, by which precious metal is sold, or "
        + reading(written, "oz av")
        + " as common ounces.";
  }

  private static String reading(Written written, String unit) {
    double grams = written.number() * Unit.named(unit, Unit.OF_MASS).orElseThrow().inside();
    return "write "
        + written.digits()
        + " "
        + unit
        + " for "
        + Decimals.upTo(grams, 1)
        + " g";
  }
}
