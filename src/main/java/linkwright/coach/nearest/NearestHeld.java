package linkwright.coach.nearest;

import java.util.List;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.nearest.ChainChoice;

/**
 * The chains that can be had near the one wished, as they were when the plan was kept last.
 *
 * @param choices the choices, those that change the chain least first
 * @param turned how often the reader turned on to what had no room
 */
record NearestHeld(List<ChainChoice> choices, int turned) implements Held {
  NearestHeld {
    choices = List.copyOf(choices);
  }

  @Override
  public PlaceId place() {
    return PlaceId.NEAREST;
  }
}
