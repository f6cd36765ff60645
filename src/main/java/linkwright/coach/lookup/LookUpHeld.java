package linkwright.coach.lookup;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * What is looked up.
 *
 * @param at which one is chosen among those found
 * @param search what the list is narrowed by; empty for all
 * @param open whether the chosen one is shown whole
 * @param turned which part of it
 * @param form the search while it is typed
 */
public record LookUpHeld(int at, String search, boolean open, int turned, Optional<Form> form)
    implements Held {
  static final LookUpHeld ALL = new LookUpHeld(0, "", false, 0, Optional.empty());

  @Override
  public PlaceId place() {
    return PlaceId.LOOKUP;
  }
}
