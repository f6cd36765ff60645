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
 * @param closed whether its job is closed: then nothing is typed into it
 */
public record PlanHeld(
    Form open, Standing preview, Optional<Standing> last, int turned, boolean closed)
    implements Held {
  /** The plan as it is opened, with what stood before it: what it comes to, or the kept one. */
  static PlanHeld opened(Form open, Standing preview, Standing kept) {
    return new PlanHeld(open, preview, holding(preview).or(() -> holding(kept)), 0, false);
  }

  /** The plan of a closed job, as it stays. */
  static PlanHeld closed(Form asKept, Standing kept) {
    return new PlanHeld(asKept, kept, holding(kept), 0, true);
  }

  private static Optional<Standing> holding(Standing standing) {
    return Optional.of(standing).filter(any -> any.counted().holds());
  }

  /** The same typed on. */
  PlanHeld typed(Form other, Standing now) {
    return new PlanHeld(other, now, before(other, now), 0, closed);
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
    return Optional.of(open).filter(any -> !closed);
  }

  PlanHeld with(Form other) {
    return new PlanHeld(other, preview, before(other, preview), turned, closed);
  }

  PlanHeld turned(int by) {
    return new PlanHeld(open, preview, last, turned + by, closed);
  }
}
