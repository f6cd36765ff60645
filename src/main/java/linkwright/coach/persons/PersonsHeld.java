package linkwright.coach.persons;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * Who works: a form of one field; without it the answer is kept.
 *
 * @param form the form
 * @param asked a name that is no student's, of which it was asked whether it is meant; empty if
 *     none
 */
public record PersonsHeld(Optional<Form> form, String asked) implements Held {
  static PersonsHeld of(Form form, String asked) {
    return new PersonsHeld(Optional.of(form), asked);
  }

  @Override
  public PlaceId place() {
    return PlaceId.PERSONS;
  }
}
