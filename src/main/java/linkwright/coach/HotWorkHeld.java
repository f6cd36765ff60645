package linkwright.coach;

import java.util.Optional;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;

/**
 * Whether every flame is out is asked.
 *
 * @param from what the place holds that it is asked in front of
 * @param then what was about to be done there; empty for nothing
 * @param answered whether it is answered, and what was about to be done is to be done
 */
record HotWorkHeld(Held from, Optional<Act> then, boolean answered) implements Held {
  /** Asked by itself, in front of that. */
  static HotWorkHeld before(Held from) {
    return new HotWorkHeld(from, Optional.empty(), false);
  }

  HotWorkHeld answer() {
    return new HotWorkHeld(from, then, true);
  }

  @Override
  public Optional<PlaceId> opensAt() {
    return from.opensAt();
  }

  @Override
  public PlaceId place() {
    return PlaceId.HOT_WORK;
  }
}
