package linkwright.coach;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * All keys of the place they were asked for at.
 *
 * @param from what that place holds
 * @param turned how often the reader turned on
 */
record HelpHeld(Held from, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.HELP;
  }
}
