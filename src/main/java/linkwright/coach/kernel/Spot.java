package linkwright.coach.kernel;

import linkwright.coach.keys.Act;

/** What a click on a place of the screen means; a drawing marks its places with these. */
public sealed interface Spot {
  /** As if the act's key were pressed. */
  record ToAct(Act act) implements Spot {}

  /** The row of a list, from 0. */
  record ToRow(int row) implements Spot {}

  /** The field of a form, from 0; one past the last is the line that keeps it. */
  record ToField(int field) implements Spot {}
}
