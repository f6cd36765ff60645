package linkwright.coach.saying;

import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * A student is asked before a step.
 *
 * @param told whether her last answer is being told
 * @param card the card that was asked about, to be entered in the job; empty for none
 * @param turned how often the reader turned on
 */
record SayingHeld(boolean told, String card, int turned) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.SAYING;
  }
}
