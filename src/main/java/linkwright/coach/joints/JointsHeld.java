package linkwright.coach.joints;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * Joints while they are entered.
 *
 * @param open the form
 */
record JointsHeld(Form open) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.JOINTS;
  }

  @Override
  public Optional<Form> form() {
    return Optional.of(open);
  }
}
