package linkwright.coach;

import java.util.List;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** What keys, acts and clicks do while a form is open. */
final class OpenForm {
  private OpenForm() {}

  static Turn key(Model model, Form form, Key key) {
    Place place = Places.of(model);
    if (model.settings().keys().find(key, List.of(Act.THROW_AWAY)).isPresent()) {
      return thrownAway(model, place, form);
    }
    Form.KeyOutcome outcome = form.key(key);
    if (outcome instanceof Form.KeyOutcome.Edited edited) {
      return place.edited(model, edited.form(), edited.textChanged());
    }
    if (outcome instanceof Form.KeyOutcome.Confirmed confirmed) {
      return HotWorkGate.confirmed(model, place, confirmed.form());
    }
    return key.is(Key.Kind.ESCAPE) ? place.formLeft(model) : place.typed(model, key);
  }

  static Turn act(Model model, Form form, Act act) {
    Place place = Places.of(model);
    return switch (act) {
      case KEEP -> HotWorkGate.confirmed(model, place, form.completed());
      case ROUND -> place.formLeft(model);
      case THROW_AWAY -> thrownAway(model, place, form);
      default -> Turn.to(model.told("First keep or leave what is being typed."));
    };
  }

  private static Turn thrownAway(Model model, Place place, Form form) {
    return form.purpose().isJobless()
        ? JoblessDrafts.thrownAway(model, place, form)
        : Drafting.thrownAway(model, place, form);
  }

  /** The line that keeps the form is chosen first and keeps it when clicked again. */
  static Turn field(Model model, Form form, int field) {
    Place place = Places.of(model);
    if (field == form.foldLine()) {
      return place.edited(model, form.unfold(), false);
    }
    return field == form.fields().size() && form.at() == field
        ? HotWorkGate.confirmed(model, place, form.completed())
        : place.edited(model, form.withAt(field), false);
  }
}
