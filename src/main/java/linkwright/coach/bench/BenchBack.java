package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.InMind;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.Cards;
import linkwright.job.Fact;
import linkwright.routine.Step;

/** A wait called her away: once it is answered, what would go on leads back to where she worked. */
final class BenchBack {
  private BenchBack() {}

  /** From where she was called to this step; empty if she was not, or its wait still rings. */
  private static Optional<InMind.At> from(Model model, AtBench at) {
    InMind.At here = new InMind.At(slug(model), at.step().id());
    return model
        .bench()
        .mind()
        .back()
        .filter(errand -> errand.to().equals(here))
        .map(InMind.Errand::from);
  }

  private static String slug(Model model) {
    return model.job().map(OpenJob::slug).orElse("");
  }

  /** Whether she was called here from another job. */
  static boolean fromElsewhere(Model model, AtBench at) {
    return from(model, at).filter(from -> !from.slug().equals(slug(model))).isPresent();
  }

  /** The way back; empty where there is none, or where nothing more is to do there. */
  static Optional<Turn> turn(Model model, AtBench at) {
    Optional<InMind.At> from = from(model, at);
    if (from.isPresent() && !from.get().slug().equals(slug(model))) {
      String slug = from.get().slug();
      Model on = model.arrived().toward(Optional.of(slug)).told("Back to where you worked.");
      return Optional.of(Turn.with(on, new Effect.OpenBook(slug)));
    }
    return from.flatMap(there -> at.routine().step(there.step()))
        .filter(step -> hasWork(model, AtBench.of(at.routine(), model.job().orElseThrow(), step)))
        .map(
            step ->
                BenchGate.open(
                    model.told("Back to “" + step.title() + "”, where you worked."), step));
  }

  private static boolean hasWork(Model model, AtBench there) {
    if (!there.counts()) {
      return !there.isDone(model.job().orElseThrow().state());
    }
    return there.begins()
        ? !BenchCount.enoughAreCut(model, there)
        : !there.enough() && there.waiting() + there.redo() > 0;
  }

  /**
   * The step to go on to where the work went past this one while its wait ran: the first behind it
   * with something to do, at most the furthest that was opened since. Nothing is walked again that
   * was done or passed meanwhile. Empty where nobody went past.
   */
  static Optional<Step> past(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    if (at.counts() || at.timed().isEmpty()) {
      return Optional.empty();
    }
    int furthest = furthest(job, at);
    List<Step> steps = at.routine().steps();
    for (int number = at.number() + 1; number < furthest; number++) {
      AtBench there = AtBench.of(at.routine(), job, steps.get(number - 1));
      if (isOpen(model, at, there)) {
        return number == at.number() + 1 ? Optional.empty() : Optional.of(there.step());
      }
    }
    return furthest > at.number() + 1 ? Optional.of(steps.get(furthest - 1)) : Optional.empty();
  }

  /** The number of the furthest step that was opened since the wait here was begun; else 0. */
  private static int furthest(OpenJob job, AtBench at) {
    int furthest = 0;
    for (int i = job.entries().size() - 1; i >= 0; i--) {
      Fact fact = job.entries().get(i).fact();
      if (fact instanceof Fact.TimerStarted begun && begun.step().equals(at.step().id())) {
        return furthest;
      }
      if (fact instanceof Fact.StepOpened opened) {
        int number =
            at.routine().step(opened.step()).map(at.routine().steps()::indexOf).orElse(-1) + 1;
        furthest = Math.max(furthest, number);
      }
    }
    return 0;
  }

  /** Whether something is to do there: a card, what was neither done nor passed, or pieces. */
  private static boolean isOpen(Model model, AtBench at, AtBench there) {
    if (Cards.of(model, there).next().isPresent()) {
      return true;
    }
    OpenJob job = model.job().orElseThrow();
    return there.counts()
        ? !there.begins() && BenchWait.hasWork(model, at, there)
        : there.waitRunning(model).isEmpty() && BenchPassing.isUndone(job, there);
  }

  /** As a step opens: any other than that of the wait ends the errand. */
  static Model opening(Model model, Step step) {
    InMind.At to = new InMind.At(slug(model), step.id());
    boolean goesOn =
        model.bench().mind().back().filter(errand -> errand.to().equals(to)).isPresent();
    return goesOn ? model : model.arrived();
  }
}
