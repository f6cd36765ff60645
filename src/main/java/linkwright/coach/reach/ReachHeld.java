package linkwright.coach.reach;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.reach.WithinReach;

/**
 * What can be had from what there is.
 *
 * @param typed what there is, as typed, by the words of its limits
 * @param reach what can be had from it; reckoned once, for it takes many plans
 * @param form what there is while it is typed
 * @param turned how often its reader turned on
 */
record ReachHeld(
    Map<String, String> typed, Optional<WithinReach> reach, Optional<Form> form, int turned)
    implements Held {
  ReachHeld {
    typed = Map.copyOf(typed);
  }

  @Override
  public PlaceId place() {
    return PlaceId.REACH;
  }
}
