package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.Strikes;
import linkwright.job.TimeSheet;
import linkwright.quantity.Read;
import linkwright.quantity.Span;
import linkwright.routine.StepId;

/** Hours put right by hand: of one step or of the whole job, with the reason. */
final class HoursForm {
  private static final String WHOLE = "the whole job";
  private static final String OF = "of";
  private static final String TIME = "time";
  private static final String WHY = "why";

  private HoursForm() {}

  static Form of(Model model) {
    TimeSheet times = times(model);
    List<String> choices = new ArrayList<>(List.of(WHOLE));
    choices.addAll(steps(model).values());
    String now = Clock.spoken(times.totalSeconds());
    return Form.of(
        Form.Purpose.HOURS,
        "Hours put right",
        "put them right",
        List.of(
            Field.choice(OF, "of", WHOLE, "a step, or all of it", choices)
                .helped("What was counted wrongly: one step, or the whole job."),
            Field.of(TIME, "they were", "", "counted so far in all: " + now)
                .takes(Measure.TIME, model.settings().units())
                .helped("What was really worked, such as 3 h 20 min; a number alone is minutes."),
            Field.of(WHY, "why", "", "forgot to step away, worked on without the program")
                .helped("It stands in the book beside the hours that were put right.")));
  }

  /** The steps that hours were counted at, by id, with their titles. */
  private static Map<StepId, String> steps(Model model) {
    OpenJob job = model.job().orElseThrow();
    Map<StepId, String> steps = new LinkedHashMap<>();
    job.standing()
        .walked()
        .ifPresent(
            routine ->
                routine.steps().stream()
                    .filter(step -> job.state().times().secondsByStep().containsKey(step.id()))
                    .forEach(step -> steps.put(step.id(), JobWords.fill(step.title(), model))));
    return steps;
  }

  private static TimeSheet times(Model model) {
    return model.job().orElseThrow().state().times();
  }

  /** What is wrong with what is typed; an empty field only once the form is to be kept. */
  static Map<String, String> troubles(Form form, boolean atTheEnd) {
    Map<String, String> troubles = new LinkedHashMap<>();
    String time = form.text(TIME);
    if (atTheEnd || !time.isEmpty()) {
      Read<Span> read =
          time.isEmpty() ? Read.bad("Give a time, such as 3 h 20 min.") : Span.read(time);
      read.problem().ifPresent(sentence -> troubles.put(TIME, sentence));
    }
    if (atTheEnd && form.text(WHY).isBlank()) {
      troubles.put(WHY, "Say why, so that the book can tell it.");
    }
    return troubles;
  }

  static Fact fact(Model model, Form form) {
    double is = Span.read(form.text(TIME)).orThrow().seconds();
    TimeSheet times = times(model);
    Optional<StepId> step =
        steps(model).entrySet().stream()
            .filter(each -> each.getValue().equals(form.text(OF)))
            .map(Map.Entry::getKey)
            .findFirst();
    double was =
        step.map(id -> times.secondsByStep().getOrDefault(id, 0.0)).orElseGet(times::totalSeconds);
    return new BenchFact.HoursCorrected(step.orElse(StepId.NONE), was, is, form.text(WHY));
  }

  /** What was put right last, with its reason; empty where nothing was. */
  static Optional<String> said(Model model) {
    List<Entry> entries = model.job().orElseThrow().entries();
    Strikes strikes = Strikes.in(entries);
    return entries.stream()
        .filter(entry -> entry.fact() instanceof BenchFact.HoursCorrected && !strikes.has(entry))
        .reduce((first, second) -> second)
        .map(entry -> EntryWords.of(entry.fact(), model) + ".")
        .map(words -> Character.toUpperCase(words.charAt(0)) + words.substring(1));
  }
}
