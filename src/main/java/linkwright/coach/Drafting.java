package linkwright.coach;

import java.util.Map;
import linkwright.job.Fact;

/** Keeps what is typed until it is entered, so that neither a crash nor esc loses it. */
final class Drafting {
  private Drafting() {}

  /** Keeps the form's texts beside the book. */
  static Turn keep(Model model, String draft, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(draft, form.texts())),
        new Effect.KeepDraft(job.slug(), draft, form.texts()));
  }

  /** Enters facts and forgets the draft that became them. */
  static Turn drop(Model model, String draft, Fact... facts) {
    OpenJob job = model.job().orElseThrow();
    Turn kept = Turn.keep(model.with(job.withDraft(draft, Map.of())), facts);
    return kept.and(new Effect.DropDraft(job.slug(), draft));
  }
}
