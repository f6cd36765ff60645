package linkwright.coach.weigh;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** Weighing in and the price; turned counts on through what has no room at once. */
public record WeighHeld(Optional<Form> form, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.WEIGH_IN;
  }

  WeighHeld(Optional<Form> form) {
    this(form, 0);
  }
}
