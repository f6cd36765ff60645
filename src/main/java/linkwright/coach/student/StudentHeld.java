package linkwright.coach.student;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** A student's report, the form that is open, how often the reader turned on. */
record StudentHeld(Optional<Form> form, int turned) implements Held {
  static final StudentHeld PLAIN = new StudentHeld(Optional.empty(), 0);

  @Override
  public PlaceId place() {
    return PlaceId.STUDENT;
  }
}
