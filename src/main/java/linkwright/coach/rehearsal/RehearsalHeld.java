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
 * @param side what of the step is shown
 * @param drawing which of its drawings, from 0
 * @param turned how often the reader turned on
 */
record RehearsalHeld(
    String routine, int at, Instant since, boolean waits, StepSide side, int drawing, int turned)
    implements Held {
  /** What of a step is shown. */
  enum StepSide {
    TEXTS,
    /** Its cautions whole. */
    CARDS,
    /** Its trade words explained. */
    WORDS,
    DRAWN
  }

  RehearsalHeld turned(int times) {
    return new RehearsalHeld(routine, at, since, waits, side, drawing, times);
  }

  /** That side in place of the texts, or the texts again. */
  RehearsalHeld turnedTo(StepSide other) {
    return shows(side == other ? StepSide.TEXTS : other, 0);
  }

  /** The next of so many drawings; after the last its texts again. */
  RehearsalHeld nextDrawn(int all) {
    int next = side == StepSide.DRAWN ? drawing + 1 : 0;
    return next < all ? shows(StepSide.DRAWN, next) : shows(StepSide.TEXTS, 0);
  }

  private RehearsalHeld shows(StepSide shown, int which) {
    return new RehearsalHeld(routine, at, since, waits, shown, which, 0);
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
