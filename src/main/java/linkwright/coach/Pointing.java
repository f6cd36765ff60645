package linkwright.coach;

import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Spot;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;

/** What a click does: nothing that a key does not do too. */
final class Pointing {
  private Pointing() {}

  static Turn at(Model model, Spot spot) {
    if (spot instanceof Spot.ToAct to) {
      return act(model, to.act());
    }
    if (spot instanceof Spot.ToRow to) {
      return Places.of(model).row(model, to.row());
    }
    return model
        .held()
        .form()
        .map(form -> field(model, form, ((Spot.ToField) spot).field()))
        .orElseGet(() -> Turn.to(model));
  }

  private static Turn act(Model model, Act act) {
    return model.settings().keys().keysOf(act).stream()
        .findFirst()
        .flatMap(KeyNames::read)
        .map(key -> Update.key(model, key))
        .orElseGet(() -> Turn.to(model));
  }

  /** The line that keeps the form is chosen first and keeps it when clicked again. */
  private static Turn field(Model model, Form form, int field) {
    Place place = Places.of(model);
    return field >= form.fields().size() && form.at() == field
        ? place.confirmed(model, form)
        : place.edited(model, form.withAt(field), false);
  }
}
