package linkwright.coach.kernel;

import java.util.List;
import linkwright.coach.Places;
import linkwright.coach.form.Form;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** How one screen behaves. Each is a small class of its own; {@link Places} finds it. */
interface Place {
  /** The acts on offer, the commonest first; shown in this order. */
  List<Act> acts(Model model);

  /** One of those acts. */
  Turn act(Model model, Act act);

  /** A key that is none of them. */
  default Turn typed(Model model, Key key) {
    return Turn.to(model);
  }

  /** A form of this screen was edited. */
  default Turn edited(Model model, Form form, boolean textChanged) {
    return Turn.to(model);
  }

  /** A form of this screen is to be kept. */
  default Turn confirmed(Model model, Form form) {
    return Turn.to(model);
  }

  /** Esc was pressed in a form. */
  default Turn formLeft(Model model) {
    return Turn.to(model);
  }

  /** Entries this screen asked for are on the disk. */
  default Turn settled(Model model) {
    return Turn.to(model);
  }

  /** A row of this screen's list was clicked. */
  default Turn row(Model model, int row) {
    return Turn.to(model);
  }
}
