package linkwright.coach.tray;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The jobs at hand. */
public record TrayHeld(int at, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
