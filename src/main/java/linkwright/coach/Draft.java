package linkwright.coach;

import java.util.Locale;
import java.util.Map;

/**
 * What is typed in a form and not entered yet. It is kept at every change, comes back when the form
 * is opened again, and goes when its entry is on the disk.
 */
final class Draft {
  private Draft() {}

  /** The form with what was typed in it before, if it was left. */
  static Form resumed(Model model, Form form) {
    return model
        .job()
        .map(job -> form.withTexts(job.drafts().getOrDefault(id(form), Map.of())))
        .orElse(form);
  }

  /** Keeps what is typed now; the model shows the form already. */
  static Turn typed(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(id(form), form.texts())),
        new Effect.KeepDraft(job.slug(), id(form), form.texts()));
  }

  /** Forgets what was typed: it is entered. */
  static Turn entered(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(id(form), Map.of())), new Effect.DropDraft(job.slug(), id(form)));
  }

  private static String id(Form form) {
    return form.purpose().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
