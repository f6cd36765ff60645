package linkwright.coach;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.standing.CountedPlan;

/** The plan: typed field by field, worked out at every key, kept when it holds together. */
final class PlanPlace implements Place {
  private static final String DRAFT = "plan";

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.KEEP);
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.to(model);
  }

  /** Opens the plan with what was typed last, entered or not. */
  static Turn enter(Model model) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> wish = job.state().course().wish();
    Map<String, String> begun = wish.isEmpty() ? PlanFields.usual(model) : wish;
    Map<String, String> texts = job.drafts().getOrDefault(DRAFT, begun);
    return Turn.to(model.with(screen(model, PlanFields.form(model, texts))));
  }

  private static Screen.Plan screen(Model model, Form form) {
    JobState state = model.job().orElseThrow().state();
    CountedPlan preview = CountedPlan.ofTyped(form.texts(), state, model.handbook());
    // A field that nobody has come to yet is not wrong; it is only still empty.
    Map<String, String> troubles = new LinkedHashMap<>(preview.troubles());
    form.fields().stream()
        .filter(field -> field.text().isBlank())
        .forEach(field -> troubles.remove(field.id()));
    return new Screen.Plan(form.withTroubles(troubles), preview);
  }

  /** Page down and up turn over what the plan comes to. */
  @Override
  public Turn typed(Model model, Key key) {
    int by = key.is(Key.Kind.PAGE_DOWN) ? 1 : key.is(Key.Kind.PAGE_UP) ? -1 : 0;
    Screen.Plan plan = (Screen.Plan) model.screen();
    return Turn.to(model.with(new Screen.Plan(plan.open(), plan.preview(), plan.part() + by)));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    if (!textChanged) {
      CountedPlan preview = ((Screen.Plan) model.screen()).preview();
      int part = ((Screen.Plan) model.screen()).part();
      return Turn.to(model.with(new Screen.Plan(form, preview, part)));
    }
    OpenJob job = model.job().orElseThrow();
    Model kept = model.with(job.withDraft(DRAFT, form.texts()));
    return Turn.with(
        kept.with(screen(kept, form)), new Effect.KeepDraft(job.slug(), DRAFT, form.texts()));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    CountedPlan counted = CountedPlan.ofTyped(form.texts(), job.state(), model.handbook());
    if (!counted.holds()) {
      Form told = form.withTroubles(counted.troubles()).atFirstTrouble();
      String sentence =
          counted.sentence().isEmpty()
              ? "Not kept yet: " + counted.troubles().values().stream().findFirst().orElse("")
              : "Not kept yet: " + counted.sentence();
      return Turn.to(model.with(new Screen.Plan(told, counted)).trouble(sentence));
    }
    Map<String, String> wish = new LinkedHashMap<>();
    form.texts()
        .forEach(
            (key, text) -> {
              if (!text.isBlank()) {
                wish.put(key, text.strip());
              }
            });
    if (wish.equals(job.state().course().wish())) {
      return Turn.to(round(model).told("The plan is as it was."));
    }
    return Turn.keep(model.with(new Screen.Plan(form, counted)), new Fact.PlanSet(wish));
  }

  @Override
  public Turn settled(Model model) {
    return model
        .screen()
        .form()
        .map(form -> Drafting.entered(round(model).told("The plan is kept."), form))
        .orElse(Turn.to(model));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(round(model));
  }

  private static Model round(Model model) {
    return model.with(new Screen.Round(Screen.Bench.PLAIN));
  }
}
