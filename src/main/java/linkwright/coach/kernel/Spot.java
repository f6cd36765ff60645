package linkwright.coach.kernel;

import linkwright.coach.keys.Act;

/** What a click on a place of the screen means; a drawing marks its places with these. */
public sealed interface Spot {
  /** The message of a click there. */
  Message message();

  /** An act. */
  record ToAct(Act act) implements Spot {
    @Override
    public Message message() {
      return new Message.ActChosen(act);
    }
  }

  /** The row of a list, from 0. */
  record ToRow(int row) implements Spot {
    @Override
    public Message message() {
      return new Message.RowChosen(row);
    }
  }

  /** The field of a form, from 0; one past the last is the line that keeps it. */
  record ToField(int field) implements Spot {
    @Override
    public Message message() {
      return new Message.FieldChosen(field);
    }
  }
}
