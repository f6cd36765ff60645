package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.JobState;
import linkwright.standing.CountedPlan;
import linkwright.standing.JobTraits;
import linkwright.standing.PlanDefaults;
import linkwright.standing.Standing;
import linkwright.standing.asked.Questions;

/** The plan: typed field by field, worked out at every key, kept when it holds together. */
public final class PlanPlace implements Place {
  @Override
  public Content content(Model model) {
    PlanHeld plan = (PlanHeld) model.held();
    List<Part> typed =
        new ArrayList<>(plan.closed() ? kept(plan) : List.of(new Fields(plan.open())));
    typed.addAll(PlanContent.drawn(plan, model));
    return Content.of("plan", new Beside(typed, PlanContent.comesTo(plan, model)));
  }

  /** What was wished of a chain that is made: nothing of it is typed any more. */
  private static List<Part> kept(PlanHeld plan) {
    List<Row> rows =
        plan.open().fields().stream()
            .filter(field -> !field.text().isBlank())
            .map(field -> Row.of(field.label(), field.text()))
            .toList();
    return List.of(Prose.aside("The job is closed: its plan stays as it is."), new Rows(rows));
  }

  private static final String DRAFT = "plan";

  @Override
  public List<Act> allActs() {
    return List.of(Act.KEEP, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    return ((PlanHeld) model.held()).closed()
        ? Turning.with(List.of(), model, this)
        : List.of(Act.KEEP);
  }

  @Override
  public Turn act(Model model, Act act) {
    PlanHeld held = (PlanHeld) model.held();
    return switch (act) {
      case MORE, LESS ->
          Turn.to(model.with(held.turned(Turning.to(held.turned(), act) - held.turned())));
      default -> Turn.to(model);
    };
  }

  /** Opens the plan with what was typed last, entered or not. */
  @Override
  public Turn enter(Model model) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> wish = job.state().course().wish();
    if (job.state().course().closed()) {
      return Turn.to(model.with(PlanHeld.closed(PlanFields.form(model, wish), job.standing())));
    }
    Map<String, String> begun = wish.isEmpty() ? PlanFields.usual(model) : wish;
    Map<String, String> texts = job.drafts().getOrDefault(DRAFT, begun);
    Form form = PlanFields.form(model, texts);
    Standing preview = comesTo(model, form);
    return Turn.to(
        model.with(PlanHeld.opened(told(model, form, preview), preview, job.standing())));
  }

  /** What the form comes to: of a plan as it is kept, what every other place tells of the job. */
  private static Standing comesTo(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    JobState state = job.state();
    return written(form.texts()).equals(written(state.course().wish()))
        ? job.standing()
        : Standing.ofTyped(form.texts(), state, model.handbook());
  }

  private static Map<String, String> written(Map<String, String> texts) {
    Map<String, String> written = new HashMap<>(texts);
    written.values().removeIf(String::isBlank);
    return written;
  }

  private static Form told(Model model, Form form, Standing preview) {
    // A field that nobody has come to yet is not wrong; it is only still empty.
    Map<String, String> troubles =
        new LinkedHashMap<>(preview.counted().saidIn(model.settings().units()).troubles());
    form.fields().stream()
        .filter(field -> field.text().isBlank())
        .forEach(field -> troubles.remove(field.id()));
    return form.withTroubles(troubles);
  }

  /** Page down and up turn over what the plan comes to. */
  @Override
  public Turn typed(Model model, Key key) {
    return Turn.to(model.with(((PlanHeld) model.held()).turned(Turning.by(key))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    PlanHeld held = (PlanHeld) model.held();
    if (!textChanged) {
      return Turn.to(model.with(held.with(form)));
    }
    OpenJob job = model.job().orElseThrow();
    Model kept = model.with(job.withDraft(DRAFT, form.texts()));
    Standing preview = comesTo(kept, form);
    return Turn.with(
        kept.with(held.typed(told(kept, form, preview), preview)),
        new Effect.KeepDraft(job.slug(), DRAFT, form.texts()));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    PlanHeld held = (PlanHeld) model.held();
    Standing typed = comesTo(model, form);
    CountedPlan counted = typed.counted().saidIn(model.settings().units());
    if (!counted.holds()) {
      Form told = form.withTroubles(counted.troubles()).atFirstTrouble();
      String sentence =
          counted.sentence().isEmpty()
              ? "Not kept yet: " + counted.troubles().values().stream().findFirst().orElse("")
              : "Not kept yet: " + counted.sentence();
      return Turn.to(model.with(held.typed(told, typed)).trouble(sentence));
    }
    Map<String, String> questions =
        Questions.ofPlan(
            typed,
            model.handbook().routine(job.state().course().routine()),
            JobTraits.of(form.texts(), model.handbook().reference()),
            model.settings().units());
    Optional<Form> asking = Asking.first(form, questions);
    if (asking.isPresent()) {
      return Turn.to(
          model.with(held.typed(asking.get(), typed)).trouble(Asking.sentence(questions)));
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
      return Turn.goTo(model.told("The plan is as it was."), PlaceId.ROUND);
    }
    return Turn.keep(
        model.with(held.typed(form, typed)),
        PlanDefaults.kept(wish, job.state(), model.handbook()));
  }

  @Override
  public Turn settled(Model model) {
    return model
        .held()
        .form()
        .map(form -> Drafting.entered(model.told("The plan is kept."), form))
        .map(turn -> turn.thenGoTo(PlaceId.ROUND))
        .orElse(Turn.to(model));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.goTo(model, PlaceId.ROUND);
  }
}
