package linkwright.coach.reckoner;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.reckon.Reckoning;

/**
 * The reckoner.
 *
 * @param at which sum is chosen
 * @param form what it is reckoned from, while it is typed
 * @param result what that comes to, if the form is open
 * @param typed sum → what was typed for it on this visit
 */
public record ReckonerHeld(
    int at, Optional<Form> form, Optional<Reckoning> result, Map<String, Map<String, String>> typed)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.RECKONER;
  }

  public ReckonerHeld {
    typed = Map.copyOf(typed);
  }
}
