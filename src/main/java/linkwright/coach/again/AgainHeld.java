package linkwright.coach.again;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * A job that is about to be made again.
 *
 * @param open what may differ
 * @param turned how often its reader turned on
 */
record AgainHeld(Form open, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.MADE_AGAIN;
  }

  @Override
  public Optional<Form> form() {
    return Optional.of(open);
  }
}
