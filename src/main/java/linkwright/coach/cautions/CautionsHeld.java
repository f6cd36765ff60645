package linkwright.coach.cautions;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The cautions, one open at a time.
 *
 * @param at which one is chosen, from 0
 * @param open whether it is shown whole
 * @param turned which part of it, where the window is too low for all of it; goes round
 * @param search what the list is narrowed by; empty for all
 * @param form the search while it is typed
 */
public record CautionsHeld(int at, boolean open, int turned, String search, Optional<Form> form)
    implements Held {
  CautionsHeld(int at, boolean open, int turned, String search) {
    this(at, open, turned, search, Optional.empty());
  }

  @Override
  public PlaceId place() {
    return PlaceId.CAUTIONS;
  }
}
