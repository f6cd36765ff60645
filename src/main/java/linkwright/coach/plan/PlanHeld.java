package linkwright.coach.plan;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.CountedPlan;

/**
 * The plan while it is typed; the preview is what it comes to, and part counts on through what of
 * it has no room at once.
 */
public record PlanHeld(Form open, CountedPlan preview, int part) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.PLAN;
  }

  PlanHeld(Form open, CountedPlan preview) {
    this(open, preview, 0);
  }

  @Override
  public Optional<Form> form() {
    return Optional.of(open);
  }
}
