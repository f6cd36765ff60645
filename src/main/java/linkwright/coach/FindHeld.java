package linkwright.coach;

import linkwright.coach.form.LineEdit;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * What is looked for.
 *
 * @param from what the place holds where it was asked
 * @param line what is typed
 * @param at which of the things found is chosen
 */
record FindHeld(Held from, LineEdit line, int at) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.FIND;
  }
}
