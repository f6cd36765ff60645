package linkwright.coach.student;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;

/**
 * A student's report.
 *
 * @param form the form that is open
 * @param turned how often the reader turned on
 * @param ofClass whether the class led here, and is come back to
 */
record StudentHeld(Optional<Form> form, int turned, boolean ofClass) implements Held {
  /** The report from its beginning, as it was come to. */
  static StudentHeld of(Model model) {
    PlaceId before = model.held().place();
    return new StudentHeld(
        Optional.empty(),
        0,
        model.held() instanceof StudentHeld held ? held.ofClass : before == PlaceId.CLASS_ROOM);
  }

  StudentHeld with(Form open) {
    return new StudentHeld(Optional.of(open), 0, ofClass);
  }

  StudentHeld turned(int times) {
    return new StudentHeld(Optional.empty(), times, ofClass);
  }

  @Override
  public PlaceId place() {
    return PlaceId.STUDENT;
  }
}
