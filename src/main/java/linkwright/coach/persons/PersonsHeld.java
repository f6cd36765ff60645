package linkwright.coach.persons;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** Who works: a form of one field; without it the answer is kept. */
public record PersonsHeld(Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.PERSONS;
  }
}
