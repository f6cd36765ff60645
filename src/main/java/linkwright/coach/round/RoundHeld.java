package linkwright.coach.round;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The way round: how things stand there comes from the book.
 *
 * @param turned how often the reader turned on to what had no room
 */
public record RoundHeld(int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.ROUND;
  }
}
