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
 * @param turned how often the reader turned on to what had no room
 */
record PilesHeld(int at, Optional<Form> form, int turned) implements Held {
  /** From its beginning. */
  PilesHeld(int at, Optional<Form> form) {
    this(at, form, 0);
  }

  @Override
  public PlaceId place() {
    return PlaceId.PILES;
  }
}
