package linkwright.coach.rehearsal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.BendContent;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.drawn.StepWords;
import linkwright.coach.kernel.safety.CardContent;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.Wait;

/** A step as it is rehearsed: what is done and how it is seen to be right, and nothing counted. */
final class RehearsalContent {
  /** A minute of a wait goes by in a second. */
  private static final int FASTER = 60;

  private RehearsalContent() {}

  /** A routine as it is walked: a job leaves out the steps that are not meant for it. */
  static Optional<Routine> routine(Model model, String id) {
    return model
        .job()
        .filter(job -> job.state().course().routine().equals(id))
        .flatMap(job -> job.standing().walked())
        .or(() -> model.handbook().routine(id));
  }

  static Content of(Model model, RehearsalHeld held) {
    return routine(model, held.routine())
        .map(routine -> step(model, held, routine))
        .orElseGet(() -> list(model, held));
  }

  private static Content list(Model model, RehearsalHeld held) {
    List<Table.Line> lines =
        model.handbook().routines().stream()
            .map(routine -> Table.Line.of(routine.id(), JobWords.fill(routine.title(), model)))
            .toList();
    return Content.of(
        "rehearsal",
        Prose.says("Which routine is to be rehearsed? Nothing is entered, no torch is lit."),
        new Table(
            List.of(Table.Column.words("routine"), Table.Column.words("makes")), lines, held.at()));
  }

  private static Content step(Model model, RehearsalHeld held, Routine routine) {
    Step step = routine.steps().get(held.at());
    List<Part> parts = new ArrayList<>();
    String title = JobWords.fill(step.title(), model);
    parts.add(
        held.side() == RehearsalHeld.StepSide.DRAWN
            ? Prose.aside(title)
            : new Prose(Prose.Kind.HEAD, title));
    switch (held.side()) {
      case CARDS ->
          RehearsalPlace.cautions(model)
              .forEach(card -> parts.addAll(CardContent.of(model, card, "")));
      case WORDS -> {
        List<Part> words = StepWords.told(step, model);
        parts.addAll(
            words.isEmpty() ? List.of(Prose.says("No word here needs explaining.")) : words);
      }
      case DRAWN -> parts.addAll(PictureContent.pages(step, model).get(held.drawing()));
      default -> texts(model, held, step, parts);
    }
    return new Content(head(model, held, routine), parts);
  }

  private static void texts(Model model, RehearsalHeld held, Step step, List<Part> parts) {
    step.waits().stream().findFirst().ifPresent(wait -> parts.add(wait(model, held, wait)));
    if (step.does().contains(Hazard.BURNS_GAS)) {
      parts.add(Prose.stop("No torch now: show with a cold one how you hold and move it."));
    }
    for (Caution card : RehearsalPlace.cautions(model)) {
      add(parts, model, Prose.Kind.CAUTION, card.shortLine());
    }
    add(parts, model, Prose.Kind.MIND, step.mind());
    add(parts, model, Prose.Kind.DO, step.doText());
    add(parts, model, Prose.Kind.LOOK_FOR, step.lookFor());
    add(parts, model, Prose.Kind.MEASURE, step.measure());
    parts.addAll(reasons(model, step));
    parts.addAll(BendContent.below(step, model));
    parts.addAll(PictureContent.below(step, model));
  }

  static List<Part> reasons(Model model, Step step) {
    List<Part> parts = new ArrayList<>();
    add(parts, model, Prose.Kind.WHY, step.why());
    for (Remedy remedy : step.wrong()) {
      add(
          parts,
          model,
          Prose.Kind.WRONG,
          remedy.sees() + ": " + remedy.means() + " " + remedy.remedy());
    }
    return parts;
  }

  private static String head(Model model, RehearsalHeld held, Routine routine) {
    return "rehearsal, step "
        + (held.at() + 1)
        + " of "
        + routine.steps().size()
        + ": "
        + JobWords.fill(routine.title(), model);
  }

  private static Figure wait(Model model, RehearsalHeld held, Wait wait) {
    long gone = Duration.between(held.since(), model.steady()).toSeconds() * FASTER;
    long left = Math.max(0, wait.seconds() - gone);
    return new Figure(
        Clock.running(left),
        wait.name() + (left == 0 ? ": over" : ", " + FASTER + " times as fast"),
        left == 0 ? Emphasis.MAIN : Emphasis.NOW);
  }

  private static void add(List<Part> parts, Model model, Prose.Kind kind, String text) {
    parts.add(new Prose(kind, JobWords.fill(text, model)));
  }
}
