package linkwright.coach.kernel;

import java.util.Locale;
import java.util.Map;
import linkwright.coach.form.Form;

/** Keeps what is typed until it is entered, so that neither a crash nor esc loses it. */
public final class Drafting {
  private Drafting() {}

  /** Keeps the form's texts beside the book. */
  public static Turn keep(Model model, String draft, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(draft, form.texts())),
        new Effect.KeepDraft(job.slug(), draft, form.texts()));
  }

  /** The form with what was typed in it before, if it was left. */
  public static Form resumed(Model model, Form form) {
    return model
        .job()
        .map(job -> form.withTexts(job.drafts().getOrDefault(name(form), Map.of())))
        .orElse(form);
  }

  /** Keeps what is typed now under the form's own name. */
  public static Turn keep(Model model, Form form) {
    return keep(model, name(form), form);
  }

  /** Forgets what was typed in a form that stayed open until its entry was on the disk. */
  public static Turn entered(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(name(form), Map.of())),
        new Effect.DropDraft(job.slug(), name(form)));
  }

  private static String name(Form form) {
    return form.purpose().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
