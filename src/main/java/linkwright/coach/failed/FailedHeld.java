package linkwright.coach.failed;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * What failed, one line chosen.
 *
 * @param at which one, from 0
 * @param turned how often the reader turned on to what had no room
 */
record FailedHeld(int at, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.FAILED;
  }
}
