package linkwright.coach.handbook;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The handbook, one entry chosen.
 *
 * @param at which one, from 0
 * @param turned which part of it, where the window is too low for all of it; goes round
 */
public record HandbookHeld(int at, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.HANDBOOK;
  }
}
