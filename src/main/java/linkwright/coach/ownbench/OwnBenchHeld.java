package linkwright.coach.ownbench;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * Her bench while it is looked at or changed.
 *
 * @param form what is being changed
 * @param turned how often its reader turned on
 */
record OwnBenchHeld(Optional<Form> form, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.OWN_BENCH;
  }
}
