package linkwright.coach;

import java.util.Optional;

/** The jobs at hand. */
public record TrayHeld(int at, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
