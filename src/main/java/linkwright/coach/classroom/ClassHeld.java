package linkwright.coach.classroom;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/** The student of the class who is looked at, and how often the reader turned on. */
record ClassHeld(int at, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.CLASS_ROOM;
  }
}
