package linkwright.drawer;

import java.util.OptionalDouble;

/**
 * A lot as it lies in the drawer.
 *
 * @param id its name
 * @param what wire, solder, sheet, scrap
 * @param metal the metal or solder, by id
 * @param wireMm the wire's diameter, mm; empty for what is no wire
 * @param temper its temper; may be empty
 * @param batch the maker's number; may be empty
 * @param lengthMm what is left, mm; empty for what is no wire
 * @param massG what is left, g; empty where nothing says how heavy it is
 * @param cameG what came in all, g; 0 where nothing says
 * @param unaccountedG what the last stocktaking missed, g, negative where there was more; empty
 *     before one
 */
public record Lot(
    String id,
    String what,
    String metal,
    OptionalDouble wireMm,
    String temper,
    String batch,
    OptionalDouble lengthMm,
    OptionalDouble massG,
    double cameG,
    OptionalDouble unaccountedG) {

  /** How sizes that were worked out may differ in their last digits, mm. */
  private static final double SLACK_MM = 1e-6;

  /** Whether it is wire of that metal and thickness; a hundredth of a millimetre is the same. */
  public boolean is(String metalId, double mm) {
    return metal.equals(metalId)
        && wireMm.isPresent()
        && Math.abs(wireMm.getAsDouble() - mm) < 0.01;
  }

  /** Whether it is wire thicker than that, as what is drawn down from it has to be. */
  public boolean isThickerThan(double mm) {
    return mm <= wireMm.orElse(0) - SLACK_MM;
  }
}
