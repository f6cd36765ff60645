package linkwright.coach.round;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The way round holds nothing: how things stand there comes from the book. */
public record RoundHeld() implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.ROUND;
  }
}
