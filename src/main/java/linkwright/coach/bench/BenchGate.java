package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.job.Course;
import linkwright.job.Fact;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.standing.StillToDo;

/** How steps open: cautions are seen first, and the next step is where work waits. */
final class BenchGate {
  private BenchGate() {}

  /** The caution to be seen before the step that is open, or opening, can be worked on. */
  static Optional<Caution> caution(Model model) {
    return target(model).flatMap(at -> at.unseen(model));
  }

  /** The step that is about to open, or the one that is open. */
  static Optional<AtBench> target(Model model) {
    Optional<AtBench> open = AtBench.of(model);
    Optional<String> opening = BenchPlace.screen(model).opening();
    if (open.isEmpty() || opening.isEmpty()) {
      return open;
    }
    Routine routine = open.get().routine();
    OpenJob job = model.job().orElseThrow();
    return routine.step(opening.get()).map(step -> AtBench.of(routine, job, step)).or(() -> open);
  }

  /** Goes on as far as it can: once all cautions are seen, the step opens. */
  static Turn settle(Model model) {
    Optional<AtBench> target = target(model);
    if (target.isEmpty() || BenchPlace.away(model) || target.get().unseen(model).isPresent()) {
      return Turn.to(model);
    }
    Course course = model.job().orElseThrow().state().course();
    String step = target.get().step().id();
    Model shown = model.with(BenchScreens.opening(BenchPlace.screen(model), Optional.empty()));
    return course.step().equals(step)
        ? Turn.to(shown)
        : Turn.keep(
            model.with(BenchScreens.opening(BenchPlace.screen(model), Optional.of(step))),
            new Fact.StepOpened(step));
  }

  /** Opens the step so many further on. */
  static Turn step(Model model, AtBench at, int by) {
    List<Step> steps = at.routine().steps();
    int from = target(model).map(AtBench::number).orElse(at.number()) - 1;
    int next = from + by;
    if (next < 0) {
      return Turn.to(model.told("This is the first step."));
    }
    if (next >= steps.size()) {
      return Turn.to(model.told("This is the last step. Next: weigh in ({do:to-weigh-in})."));
    }
    return open(model, steps.get(next));
  }

  static Turn open(Model model, Step step) {
    return settle(
        model.with(BenchScreens.opening(BenchPlace.screen(model), Optional.of(step.id()))));
  }

  /**
   * Opens the step where work waits once this one has nothing left: first a redo pile at an earlier
   * step, then another batch if pieces are missing, else the next step.
   */
  static Turn onward(Model model, AtBench at) {
    Optional<Step> redo = redoBefore(model, at);
    if (redo.isPresent()) {
      return open(model.told("Some go back: on to “" + redo.get().title() + "”."), redo.get());
    }
    Optional<Step> behind = BenchWait.behind(model, at);
    if (behind.isPresent() && !behind.get().id().equals(at.step().id())) {
      return open(
          model.told("A wait runs still: on to “" + behind.get().title() + "”."), behind.get());
    }
    Optional<BenchAgain> again = BenchAgain.of(model, at);
    if (again.isPresent()) {
      return open(model.told(again.get().told()), again.get().step());
    }
    List<Step> steps = at.routine().steps();
    return at.number() >= steps.size()
        ? Turn.to(model.told("All done here. Next: weigh in ({do:to-weigh-in})."))
        : open(model, steps.get(at.number()));
  }

  /** The earliest step before this one with pieces to be done again that are still wanted. */
  private static Optional<Step> redoBefore(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .limit(at.number() - 1L)
        .filter(
            step -> {
              AtBench there = AtBench.of(at.routine(), job, step);
              StillToDo left = job.standing().left().get(there.piece());
              return there.redo() > 0 && (left == null || left.more() > 0);
            })
        .findFirst();
  }

  /** Opens the step whose redo pile holds pieces, if one does. */
  static Turn toRedo(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .filter(step -> AtBench.of(at.routine(), job, step).redo() > 0)
        .findFirst()
        .map(step -> open(model, step))
        .orElseGet(() -> Turn.to(model.told("Nothing is to be done again.")));
  }
}
