package linkwright.coach.hands;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The job that is looked at, counted from the last; turned counts on through the rest. */
record HandsHeld(int at, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.HANDS;
  }
}
