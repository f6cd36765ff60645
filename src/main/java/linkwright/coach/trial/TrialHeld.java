package linkwright.coach.trial;

import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.standing.TrialLength;

/**
 * Trial lengths.
 *
 * @param at which of them is chosen
 * @param rows what each would make of the chain
 * @param form the one that is being logged
 * @param turned how often its reader turned on
 */
public record TrialHeld(int at, List<TrialLength> rows, Optional<Form> form, int turned)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TRIAL_LENGTH;
  }

  TrialHeld with(Optional<Form> other) {
    return new TrialHeld(at, rows, other, turned);
  }

  TrialHeld turned(Act act) {
    return new TrialHeld(at, rows, form, Turning.to(turned, act));
  }
}
