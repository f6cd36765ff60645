package linkwright.coach.timers;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The timers. */
public record TimersHeld(int at, Optional<Form> form, int turned) implements Held {
  /** From its beginning. */
  TimersHeld(int at, Optional<Form> form) {
    this(at, form, 0);
  }

  @Override
  public PlaceId place() {
    return PlaceId.TIMERS;
  }
}
