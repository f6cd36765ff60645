package linkwright.coach.wire;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.WireStand;

/**
 * Wire on hand.
 *
 * @param stand how it stands; empty without a plan
 * @param drawn what drawing down from thicker wire comes to, as far as it was typed
 * @param form the form that is open
 * @param turned how often its reader turned on
 */
public record WireHeld(Optional<WireStand> stand, DrawDown drawn, Optional<Form> form, int turned)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.WIRE;
  }

  WireHeld with(Optional<Form> other) {
    return new WireHeld(stand, drawn, other, 0);
  }

  WireHeld drawn(DrawDown other) {
    return new WireHeld(stand, other, form, turned);
  }

  WireHeld turned(int by) {
    return new WireHeld(stand, drawn, form, turned + by);
  }
}
