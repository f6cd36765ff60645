package linkwright.quantity;

import java.util.Locale;

/**
 * An angle.
 *
 * @param radians radians, finite; may be negative and more than a full turn
 */
public record Angle(double radians) {
  private static final String EXAMPLE = "300°";

  /** Forty turns, more than any wire takes in one bend. */
  private static final double MOST_DEGREES = 14_400;

  /** An angle that is no number is the programmer's fault. */
  public Angle {
    if (Double.isNaN(radians) || Double.isInfinite(radians)) {
      throw new IllegalArgumentException("radians must be finite, not " + radians);
    }
  }

  /** The angle of so many degrees. */
  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  /** Reads degrees, with or without their sign: {@code 300}, {@code 300°}, {@code 12.5 deg}. */
  public static Read<Angle> read(String typed) {
    return Written.read(typed, EXAMPLE)
        .flatMap(
            written ->
                switch (written.rest().toLowerCase(Locale.ROOT)) {
                  case "", "°", "deg", "degree", "degrees" -> ofWritten(written.number(), typed);
                  default ->
                      Read.bad(
                          Written.quoted(written.rest())
                              + " is not a unit of angle. Write degrees, as in 300°.");
                });
  }

  /** The angle in degrees. */
  public double degrees() {
    return Math.toDegrees(radians);
  }

  private static Read<Angle> ofWritten(double degrees, String typed) {
    return Math.abs(degrees) <= MOST_DEGREES
        ? Read.good(ofDegrees(degrees))
        : Read.bad(Written.quoted(typed) + " is more than forty turns. Check the number.");
  }
}
