package linkwright.coach.trial;

import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.TrialLength;

/** TrialHeld lengths; the rows are what each would make of the chain. */
public record TrialHeld(int at, List<TrialLength> rows, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TRIAL_LENGTH;
  }
}
