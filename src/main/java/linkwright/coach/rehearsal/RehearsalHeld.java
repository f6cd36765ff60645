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
 * @param cards whether the step's cautions are shown whole, in place of the step
 * @param turned how often the reader turned on
 */
record RehearsalHeld(
    String routine, int at, Instant since, boolean waits, boolean cards, int turned)
    implements Held {
  RehearsalHeld turned(int times) {
    return new RehearsalHeld(routine, at, since, waits, cards, times);
  }

  /** The cards in place of the step, or the step again. */
  RehearsalHeld otherSide() {
    return new RehearsalHeld(routine, at, since, waits, !cards, 0);
  }

  @Override
  public PlaceId place() {
    return PlaceId.REHEARSAL;
  }

  @Override
  public boolean moves() {
    return waits;
  }
}
