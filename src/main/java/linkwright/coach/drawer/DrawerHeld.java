package linkwright.coach.drawer;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The lot that is looked at, and the form that is open. */
record DrawerHeld(int at, Optional<Form> form, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.DRAWER;
  }
}
