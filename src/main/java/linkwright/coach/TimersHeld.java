package linkwright.coach;

import java.util.Optional;

/** The timers. */
public record TimersHeld(int at, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TIMERS;
  }
}
