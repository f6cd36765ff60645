package linkwright.coach.plan;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.Standing;

/**
 * The plan while it is typed.
 *
 * @param open the form
 * @param preview what it comes to
 * @param turned how often its reader turned on
 */
public record PlanHeld(Form open, Standing preview, int turned) implements Held {
  PlanHeld(Form open, Standing preview) {
    this(open, preview, 0);
  }

  @Override
  public PlaceId place() {
    return PlaceId.PLAN;
  }

  @Override
  public Optional<Form> form() {
    return Optional.of(open);
  }

  PlanHeld with(Form other) {
    return new PlanHeld(other, preview, turned);
  }

  PlanHeld turned(int by) {
    return new PlanHeld(open, preview, turned + by);
  }
}
