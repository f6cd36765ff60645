package linkwright.coach.kernel.drafting;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;

/** Keeps what is typed until it is entered, so that neither a crash nor esc loses it. */
public final class Drafting {
  private Drafting() {}

  /** The form with what was typed in it before, if it was left. */
  public static Form resumed(Model model, Form form) {
    return model
        .job()
        .map(job -> form.resumed(typed(form, job.drafts().getOrDefault(name(form), Map.of()))))
        .orElse(form);
  }

  /** Of what was kept what was typed: the rest stood there before. */
  private static Map<String, String> typed(Form form, Map<String, String> texts) {
    Map<String, String> stood = form.texts();
    Map<String, String> typed = new HashMap<>(texts);
    typed.entrySet().removeIf(each -> each.getValue().equals(stood.get(each.getKey())));
    return typed;
  }

  /** Keeps what is typed now beside the book, under the form's own name. */
  public static Turn keep(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    return Turn.with(
        model.with(job.withDraft(name(form), form.texts())),
        new Effect.KeepDraft(job.slug(), name(form), form.texts()));
  }

  /** Forgets what was typed in a form that stayed open until its entry was on the disk. */
  public static Turn entered(Model model, Form form) {
    return form.purpose().isJobless()
        ? jobless(model, form, Map.of())
        : forgotten(model, form.purpose());
  }

  /** The form in which something waits that would be thrown away first. */
  public static Optional<Form.Purpose> first(Model model) {
    Map<String, Map<String, String>> drafts =
        model.job().map(OpenJob::drafts).orElseGet(() -> DraftWords.jobless(model));
    return DraftWords.waiting(drafts).stream().findFirst();
  }

  /** Throws away what waits in such a form: of several things it may be about, the first alone. */
  public static Turn thrownAway(Model model, Form.Purpose purpose) {
    List<String> abouts =
        purpose.isJobless() ? DraftWords.abouts(jobless(model, purpose)) : List.of();
    if (abouts.size() > 1) {
      Map<String, String> left = new LinkedHashMap<>(jobless(model, purpose));
      String told = "Thrown away: " + DraftWords.thrown(purpose, abouts.get(0)) + ".";
      left.keySet().removeIf(key -> DraftWords.about(key).equals(abouts.get(0)));
      return jobless(model.told(told), purpose, left);
    }
    return forgotten(model.told("Thrown away: " + DraftWords.thrown(purpose) + "."), purpose);
  }

  /** Throws away what is typed in a form that is no job's, of what it is about. */
  public static Turn thrownAway(Model model, Form form) {
    return entered(model.told("Thrown away: " + DraftWords.thrown(form.purpose()) + "."), form);
  }

  /** Throws away what is typed in the form that is open, and leaves it. */
  public static Turn thrownAway(Model model, Place place, Form form) {
    if (DraftWords.of(form.purpose()).isEmpty() || model.job().isEmpty()) {
      return place.formLeft(model);
    }
    Turn thrown = thrownAway(model, form.purpose());
    Turn left = place.formLeft(thrown.model());
    return new Turn(left.model(), thrown.and(left.effects()).effects(), left.next());
  }

  /** What was typed in a form that is no job's, of what it is about, and waits: field → text. */
  public static Map<String, String> jobless(Model model, Form form) {
    Map<String, String> waits = jobless(model, form.purpose());
    Map<String, String> own = new LinkedHashMap<>();
    for (String field : form.texts().keySet()) {
      Optional.ofNullable(waits.get(key(form, field))).ifPresent(text -> own.put(field, text));
    }
    return own;
  }

  /** Keeps that, beside what waits of other things; forgets it where it is nothing. */
  public static Turn jobless(Model model, Form form, Map<String, String> texts) {
    Map<String, String> all = new LinkedHashMap<>(jobless(model, form.purpose()));
    form.texts().keySet().forEach(field -> all.remove(key(form, field)));
    texts.forEach((field, text) -> all.put(key(form, field), text));
    return jobless(model, form.purpose(), all);
  }

  private static String key(Form form, String field) {
    return DraftWords.key(field, form.about());
  }

  /** What was typed in such forms that are no job's, and waits: field → text. */
  public static Map<String, String> jobless(Model model, Form.Purpose purpose) {
    return DraftWords.jobless(model).getOrDefault(DraftWords.name(purpose), Map.of());
  }

  /** Whether something waits in a form that is no job's. */
  public static boolean waits(Model model, Form.Purpose purpose) {
    return DraftWords.waiting(DraftWords.jobless(model)).contains(purpose);
  }

  private static Turn jobless(Model model, Form.Purpose purpose, Map<String, String> texts) {
    String draft = DraftWords.name(purpose);
    Map<String, Map<String, String>> all = new HashMap<>(DraftWords.jobless(model));
    boolean had = all.remove(draft) != null;
    if (texts.isEmpty()) {
      return had
          ? Turn.with(model.typed(Optional.of(all)), new Effect.DropDraft(Effect.NO_JOB, draft))
          : Turn.to(model);
    }
    all.put(draft, texts);
    return Turn.with(
        model.typed(Optional.of(all)), new Effect.KeepDraft(Effect.NO_JOB, draft, texts));
  }

  private static Turn forgotten(Model model, Form.Purpose purpose) {
    if (purpose.isJobless()) {
      return jobless(model, purpose, Map.of());
    }
    OpenJob job = model.job().orElseThrow();
    String draft = DraftWords.name(purpose);
    return Turn.with(
        model.with(job.withDraft(draft, Map.of())), new Effect.DropDraft(job.slug(), draft));
  }

  private static String name(Form form) {
    return DraftWords.name(form.purpose());
  }
}
