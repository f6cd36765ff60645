package linkwright.coach.whatif;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * Variants of a plan.
 *
 * @param typed field → what was typed of the variants
 * @param form the variants while they are typed
 * @param turned how often its reader turned on
 */
record WhatIfHeld(Map<String, String> typed, Optional<Form> form, int turned) implements Held {
  WhatIfHeld {
    typed = Map.copyOf(typed);
  }

  @Override
  public PlaceId place() {
    return PlaceId.WHAT_IF;
  }
}
