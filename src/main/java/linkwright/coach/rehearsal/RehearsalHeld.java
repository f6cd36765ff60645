package linkwright.coach.rehearsal;

import java.time.Instant;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * How far a rehearsal has come; it stands nowhere else.
 *
 * @param routine the routine; empty while one is chosen from the list
 * @param at the step, or the line of the list, from 0
 * @param since when the step was come to, by the steady clock
 * @param waits whether it has a wait, which goes on by itself
 * @param turned how often the reader turned on
 */
record RehearsalHeld(String routine, int at, Instant since, boolean waits, int turned)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.REHEARSAL;
  }

  @Override
  public boolean moves() {
    return waits;
  }
}
