package linkwright.coach.tray;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The jobs at hand.
 *
 * @param at which one is chosen among those shown
 * @param search what the list is narrowed by; empty for all
 * @param form the form that is open
 */
public record TrayHeld(int at, String search, Optional<Form> form) implements Held {
  /** All of them, or one form of the place. */
  public TrayHeld(int at, Optional<Form> form) {
    this(at, "", form);
  }

  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
