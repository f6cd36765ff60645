package linkwright.coach;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/**
 * What is typed into a form that belongs to no job waits until it is entered, wherever one goes
 * meanwhile: only what was typed, so that what stands in the other fields stays as it is by then.
 */
final class JoblessDrafts {
  private JoblessDrafts() {}

  /** The turn that a message led to, with what was typed kept, brought back or forgotten. */
  static Turn after(Model before, Message message, Turn turn) {
    Optional<Form> was = open(before);
    Optional<Form> is = open(turn.model());
    if (before.bench().mind().typed().isEmpty() || (was.isEmpty() && is.isEmpty())) {
      return turn;
    }
    if (was.isPresent() && is.isPresent() && same(was.get(), is.get())) {
      return typed(turn, was.get(), is.get());
    }
    Turn next = turn;
    if (was.isPresent() && !leaves(message)) {
      next = Drafting.entered(turn.model(), was.get()).after(turn);
    }
    Map<String, String> waits =
        is.map(form -> Drafting.jobless(turn.model(), form)).orElse(Map.of());
    if (waits.isEmpty()) {
      return next;
    }
    Turn resumed =
        Places.of(next.model()).edited(next.model(), is.orElseThrow().resumed(waits), true);
    return resumed.after(next);
  }

  /** What was typed in such a form is thrown away, the form left by now. */
  static Turn thrownAway(Model model, Place place, Form form) {
    Turn left = place.formLeft(model);
    return Drafting.thrownAway(left.model(), form).after(left);
  }

  private static boolean same(Form was, Form is) {
    return was.purpose() == is.purpose() && was.about().equals(is.about());
  }

  private static Turn typed(Turn turn, Form was, Form is) {
    Map<String, String> texts = new LinkedHashMap<>(Drafting.jobless(turn.model(), is));
    is.texts()
        .forEach(
            (field, text) -> {
              if (!text.equals(was.texts().get(field))) {
                texts.put(field, text);
              }
            });
    return was.texts().equals(is.texts())
        ? turn
        : Drafting.jobless(turn.model(), is, texts).after(turn);
  }

  private static Optional<Form> open(Model model) {
    return model.held().form().filter(form -> form.purpose().isJobless());
  }

  /** Whether a form that is gone was left, and not entered. */
  private static boolean leaves(Message message) {
    return message instanceof Message.KeyPressed pressed
        ? pressed.key().is(Key.Kind.ESCAPE)
        : message instanceof Message.ActChosen chosen
            ? chosen.act() == Act.ROUND
            : message instanceof Message.Led
                || message instanceof Message.RowChosen
                || message instanceof Message.Ticked
                || message instanceof Message.JobNotOpened;
  }
}
