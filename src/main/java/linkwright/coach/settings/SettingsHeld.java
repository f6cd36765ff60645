package linkwright.coach.settings;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The user's choices while they are changed.
 *
 * @param open the form
 * @param from what the place held where they were asked for
 */
record SettingsHeld(Form open, Held from) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.SETTINGS;
  }

  @Override
  public Optional<Form> form() {
    return Optional.of(open);
  }
}
