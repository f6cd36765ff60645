package linkwright.job;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How far a job has come through its routine.
 *
 * @param name the job's name
 * @param routine the routine's id
 * @param wish the plan file's keys with what was typed for each
 * @param step the step that is open, empty if none was opened yet
 * @param stepsDone steps without a count that were done
 * @param waitsBegun waits begun for what is not done yet
 * @param closed whether the job is closed
 * @param nextTime what to do differently next time
 */
public record Course(
    String name,
    String routine,
    Map<String, String> wish,
    String step,
    Set<String> stepsDone,
    Set<StepWait> waitsBegun,
    boolean closed,
    String nextTime) {
  static final Course BLANK = new Course("", "", Map.of(), "", Set.of(), Set.of(), false, "");

  Course after(Fact fact) {
    if (fact instanceof Fact.JobOpened opened) {
      return new Course(
          opened.name(), opened.routine(), wish, step, stepsDone, waitsBegun, false, nextTime);
    }
    if (fact instanceof Fact.PlanSet plan) {
      return with(plan.wish(), step, stepsDone, waitsBegun);
    }
    if (fact instanceof Fact.StepOpened opened) {
      return with(wish, opened.step(), stepsDone, waitsBegun);
    }
    if (fact instanceof Fact.StepDone done) {
      return with(wish, step, plus(stepsDone, done.step()), without(done.step()));
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return with(wish, step, stepsDone, without(through.step()));
    }
    if (fact instanceof Fact.TimerStarted timer && !timer.step().isEmpty()) {
      StepWait wait = new StepWait(timer.step(), timer.name());
      return with(wish, step, stepsDone, plus(waitsBegun, wait));
    }
    if (fact instanceof Fact.JobClosed done) {
      return closed(true, done.nextTime());
    }
    return fact instanceof Fact.JobReopened ? closed(false, nextTime) : this;
  }

  private Course closed(boolean nowClosed, String learnt) {
    return new Course(name, routine, wish, step, stepsDone, waitsBegun, nowClosed, learnt);
  }

  private Course with(
      Map<String, String> newWish, String newStep, Set<String> newDone, Set<StepWait> newWaits) {
    return new Course(name, routine, newWish, newStep, newDone, newWaits, closed, nextTime);
  }

  /** What is through has had its wait; what comes to the step next has not. */
  private Set<StepWait> without(String stepId) {
    return waitsBegun.stream()
        .filter(wait -> !wait.step().equals(stepId))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static <T> Set<T> plus(Set<T> set, T item) {
    Set<T> more = new HashSet<>(set);
    more.add(item);
    return Set.copyOf(more);
  }
}
