package linkwright.coach.tray;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The jobs at hand; again: the one that is about to be opened is to be made again. */
public record TrayHeld(int at, Optional<Form> form, boolean again) implements Held {
  public TrayHeld(int at, Optional<Form> form) {
    this(at, form, false);
  }

  @Override
  public Optional<PlaceId> opensAt() {
    return again ? Optional.of(PlaceId.MADE_AGAIN) : Optional.empty();
  }

  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
