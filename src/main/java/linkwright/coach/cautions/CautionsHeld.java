package linkwright.coach.cautions;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The cautions, one open at a time.
 *
 * @param at which one is chosen, from 0
 * @param open whether it is shown whole
 * @param turned which part of it, where the window is too low for all of it; goes round
 */
public record CautionsHeld(int at, boolean open, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.CAUTIONS;
  }
}
