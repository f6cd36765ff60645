package linkwright.coach.wire;

import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.WireStand;

/**
 * WireHeld on hand.
 *
 * @param stand how it stands; empty without a plan
 * @param drawn what drawing down from thicker wire comes to, as far as it was typed
 * @param form the form that is open
 */
public record WireHeld(Optional<WireStand> stand, List<String> drawn, Optional<Form> form)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.WIRE;
  }

  public WireHeld {
    drawn = List.copyOf(drawn);
  }

  WireHeld with(Optional<Form> other) {
    return new WireHeld(stand, drawn, other);
  }

  WireHeld drawn(List<String> lines) {
    return new WireHeld(stand, lines, form);
  }
}
