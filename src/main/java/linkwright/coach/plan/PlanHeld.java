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
 * @param last what it came to before the field in which the caret is was typed into; empty if it
 *     did not hold together then
 * @param turned how often its reader turned on
 */
public record PlanHeld(Form open, Standing preview, Optional<Standing> last, int turned)
    implements Held {
  /** The plan as it is opened, with what stood before it: what it comes to, or the kept one. */
  static PlanHeld opened(Form open, Standing preview, Standing kept) {
    return new PlanHeld(open, preview, holding(preview).or(() -> holding(kept)), 0);
  }

  private static Optional<Standing> holding(Standing standing) {
    return Optional.of(standing).filter(any -> any.counted().holds());
  }

  /** The same typed on. */
  PlanHeld typed(Form other, Standing now) {
    return new PlanHeld(other, now, before(other, now), 0);
  }

  /** A caret in another field has left a field that is typed: what it comes to stands. */
  private Optional<Standing> before(Form other, Standing now) {
    return other.at() == open.at() ? last : holding(now).or(() -> last);
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
    return new PlanHeld(other, preview, before(other, preview), turned);
  }

  PlanHeld turned(int by) {
    return new PlanHeld(open, preview, last, turned + by);
  }
}
