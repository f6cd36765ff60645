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
 * @param again whether the one that is about to be opened is to be made again
 */
public record TrayHeld(int at, String search, Optional<Form> form, boolean again) implements Held {
  /** All of them, or one form of the place. */
  public TrayHeld(int at, Optional<Form> form) {
    this(at, "", form, false);
  }

  /** Those that hold what is searched for. */
  TrayHeld(int at, String search, Optional<Form> form) {
    this(at, search, form, false);
  }

  @Override
  public Optional<PlaceId> opensAt() {
    return again ? Optional.of(PlaceId.MADE_AGAIN) : Optional.empty();
  }

  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
