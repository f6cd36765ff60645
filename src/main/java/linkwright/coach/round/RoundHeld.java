package linkwright.coach.round;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The way round: every place of the job, with how it stands there. */
public record RoundHeld(Held from) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.ROUND;
  }
}
