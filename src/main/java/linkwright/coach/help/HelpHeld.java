package linkwright.coach.help;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** All keys of the screen it was asked on. */
public record HelpHeld(Held from) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.HELP;
  }
}
