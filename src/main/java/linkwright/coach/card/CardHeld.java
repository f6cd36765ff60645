package linkwright.coach.card;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The card, or the form in which it is written. */
record CardHeld(Optional<Form> form, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.CARD;
  }
}
