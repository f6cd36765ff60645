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
 * @param last what it came to when it last held together; empty if it has not yet
 * @param turned how often its reader turned on
 */
public record PlanHeld(Form open, Standing preview, Optional<Standing> last, int turned)
    implements Held {
  /** What is typed, and what it comes to now or came to last. */
  static PlanHeld of(Form open, Standing preview, Optional<Standing> before) {
    Optional<Standing> last = preview.counted().holds() ? Optional.of(preview) : before;
    return new PlanHeld(open, preview, last, 0);
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
    return new PlanHeld(other, preview, last, turned);
  }

  PlanHeld turned(int by) {
    return new PlanHeld(open, preview, last, turned + by);
  }
}
