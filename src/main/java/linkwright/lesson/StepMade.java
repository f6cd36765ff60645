package linkwright.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.job.LessonFact;
import linkwright.routine.Routine;
import linkwright.routine.StepId;

/**
 * What a student made at a step, over all jobs.
 *
 * @param routine the routine
 * @param step the step of it
 * @param title what the step is called
 * @param through pieces that came through
 * @param redo reason → pieces that went back
 * @param scrapped pieces that were lost
 * @param usualRedo the routine's usual share of redo, 0 to 1
 */
public record StepMade(
    String routine,
    StepId step,
    String title,
    int through,
    Map<String, Integer> redo,
    int scrapped,
    double usualRedo) {
  /** All that went back. */
  public int back() {
    return redo.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Its share of redo, 0 to 1; 0 where nothing was made. */
  public double rate() {
    return share(back(), through);
  }

  /** What went back of all, 0 to 1. */
  static double share(int back, int through) {
    return back + through == 0 ? 0 : (double) back / (back + through);
  }

  /** All that she made, in the order in which she came to it. */
  static List<StepMade> of(Learner learner, Set<Routine> routines) {
    Map<String, StepMade> sums = new LinkedHashMap<>();
    for (Learner.Made made : learner.made()) {
      LessonFact.PiecesMade fact = made.fact();
      Optional<Routine> of =
          routines.stream().filter(routine -> routine.id().equals(fact.routine())).findFirst();
      sums.merge(
          fact.routine() + "/" + fact.step(),
          new StepMade(
              fact.routine(),
              fact.step(),
              of.flatMap(routine -> routine.step(fact.step()))
                  .map(step -> step.title())
                  .orElse(fact.step().word()),
              fact.through(),
              fact.redo(),
              fact.scrapped(),
              of.map(Routine::usualRedo).orElse(0.0)),
          StepMade::and);
    }
    return List.copyOf(sums.values());
  }

  private StepMade and(StepMade more) {
    Map<String, Integer> all = new LinkedHashMap<>(redo);
    more.redo().forEach((reason, count) -> all.merge(reason, count, Integer::sum));
    return new StepMade(
        routine, step, title, through + more.through(), all, scrapped + more.scrapped(), usualRedo);
  }
}
