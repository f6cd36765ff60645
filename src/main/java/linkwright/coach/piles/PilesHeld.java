package linkwright.coach.piles;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The piles, one chosen.
 *
 * @param at which one, from 0
 * @param form where it lies, while that is typed
 */
record PilesHeld(int at, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.PILES;
  }
}
