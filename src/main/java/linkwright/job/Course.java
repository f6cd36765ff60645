package linkwright.job;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.routine.StepId;

/**
 * How far a job has come through its routine.
 *
 * @param name the job's name
 * @param routine the routine's id
 * @param wish the plan file's keys with what was typed for each
 * @param reckonedWith key of the wish → what was taken where nothing was typed
 * @param step the step that is open, empty if none was opened yet
 * @param stepsDone steps without a count that were done
 * @param waitsBegun waits begun for what is not done yet
 * @param passed step → what was left there when it was passed with nothing done
 * @param closed whether the job is closed
 * @param nextTime what to do differently next time
 */
public record Course(
    String name,
    String routine,
    Map<String, String> wish,
    Map<String, Sourced> reckonedWith,
    StepId step,
    Set<StepId> stepsDone,
    Set<StepWait> waitsBegun,
    Map<StepId, String> passed,
    boolean closed,
    String nextTime) {
  static final Course BLANK =
      new Course("", "", Map.of(), Map.of(), StepId.NONE, Set.of(), Set.of(), Map.of(), false, "");

  Course after(Fact fact) {
    if (fact instanceof Fact.JobOpened opened) {
      return new Course(
          opened.name(),
          opened.routine(),
          wish,
          reckonedWith,
          step,
          stepsDone,
          waitsBegun,
          passed,
          false,
          nextTime);
    }
    if (fact instanceof Fact.PlanSet plan) {
      return new Course(
          name,
          routine,
          plan.wish(),
          plan.reckonedWith(),
          step,
          stepsDone,
          waitsBegun,
          passed,
          closed,
          nextTime);
    }
    if (fact instanceof Fact.StepOpened opened) {
      return with(opened.step(), stepsDone, waitsBegun, passed);
    }
    if (fact instanceof Fact.StepDone done) {
      return with(step, plus(stepsDone, done.step()), without(done.step()), notPassed(done.step()));
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return with(step, stepsDone, without(through.step()), notPassed(through.step()));
    }
    if (fact instanceof Fact.TimerStarted timer && !timer.step().isEmpty()) {
      StepWait wait = new StepWait(timer.step(), timer.waitId());
      return with(step, stepsDone, plus(waitsBegun, wait), passed);
    }
    if (fact instanceof BenchFact.StepSkipped skipped) {
      Map<StepId, String> more = new HashMap<>(passed);
      more.put(skipped.step(), skipped.why());
      return with(step, stepsDone, waitsBegun, Map.copyOf(more));
    }
    if (fact instanceof Fact.JobClosed done) {
      return closed(true, done.nextTime());
    }
    return fact instanceof Fact.JobReopened ? closed(false, nextTime) : this;
  }

  private Course closed(boolean nowClosed, String learnt) {
    return new Course(
        name, routine, wish, reckonedWith, step, stepsDone, waitsBegun, passed, nowClosed, learnt);
  }

  private Course with(
      StepId newStep, Set<StepId> newDone, Set<StepWait> newWaits, Map<StepId, String> newPassed) {
    return new Course(
        name, routine, wish, reckonedWith, newStep, newDone, newWaits, newPassed, closed, nextTime);
  }

  /** What was worked at after all is not passed any more. */
  private Map<StepId, String> notPassed(StepId stepId) {
    if (!passed.containsKey(stepId)) {
      return passed;
    }
    Map<StepId, String> left = new HashMap<>(passed);
    left.remove(stepId);
    return Map.copyOf(left);
  }

  /** What is through has had its wait; what comes to the step next has not. */
  private Set<StepWait> without(StepId stepId) {
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
