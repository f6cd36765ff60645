package linkwright.coach.timers;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The timers.
 *
 * @param at the timer that is chosen
 * @param form what is open over them
 * @param turned the pages that were turned
 * @param watchEnds why the fire watch is being ended, book by book; empty if it is not
 */
public record TimersHeld(int at, Optional<Form> form, int turned, String watchEnds)
    implements Held {
  /** From its beginning. */
  TimersHeld(int at, Optional<Form> form) {
    this(at, form, 0);
  }

  TimersHeld(int at, Optional<Form> form, int turned) {
    this(at, form, turned, "");
  }

  @Override
  public PlaceId place() {
    return PlaceId.TIMERS;
  }
}
