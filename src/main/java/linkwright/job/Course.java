package linkwright.job;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.routine.StepId;

/**
 * How far a job has come through its routine.
 *
 * @param name the job's name
 * @param routine the routine's id
 * @param wish the plan file's keys with what was typed for each
 * @param reckonedWith key of the wish → what was taken where nothing was typed
 * @param step the step that is open, empty if none was opened yet
 * @param stepsDone steps without a count that were done, the one done last at the end
 * @param waits what is in the waits of its steps and has not come out
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
    InWaits waits,
    Map<StepId, BenchFact.StepSkipped> passed,
    boolean closed,
    String nextTime) {
  static final Course BLANK =
      new Course(
          "", "", Map.of(), Map.of(), StepId.NONE, Set.of(), InWaits.NONE, Map.of(), false, "");

  Course after(Entry entry) {
    Fact fact = entry.fact();
    Course next = after(fact);
    InWaits now = waits.after(entry);
    return now.equals(waits) ? next : next.with(now);
  }

  private Course after(Fact fact) {
    if (fact instanceof Fact.JobOpened opened) {
      return new Course(
          opened.name(),
          opened.routine(),
          wish,
          reckonedWith,
          step,
          stepsDone,
          waits,
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
          waits,
          passed,
          closed,
          nextTime);
    }
    if (fact instanceof Fact.StepOpened opened) {
      return with(opened.step(), stepsDone, passed);
    }
    if (fact instanceof Fact.StepDone done) {
      return with(step, plus(stepsDone, done.step()), without(passed, done.step()));
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return with(step, stepsDone, without(passed, through.step()));
    }
    if (fact instanceof BenchFact.StepSkipped skipped) {
      return with(step, stepsDone, with(passed, skipped.step(), skipped));
    }
    if (fact instanceof Fact.JobClosed done) {
      return closed(true, done.nextTime());
    }
    return fact instanceof Fact.JobReopened ? closed(false, nextTime) : this;
  }

  private Course closed(boolean nowClosed, String learnt) {
    return new Course(
        name, routine, wish, reckonedWith, step, stepsDone, waits, passed, nowClosed, learnt);
  }

  private Course with(
      StepId newStep, Set<StepId> newDone, Map<StepId, BenchFact.StepSkipped> newPassed) {
    return new Course(
        name, routine, wish, reckonedWith, newStep, newDone, waits, newPassed, closed, nextTime);
  }

  private Course with(InWaits others) {
    return new Course(
        name, routine, wish, reckonedWith, step, stepsDone, others, passed, closed, nextTime);
  }

  /** The same with no more in its waits than the piles hold. */
  Course within(Piles piles) {
    InWaits left = waits.within(piles);
    return left.equals(waits) ? this : with(left);
  }

  private static <T> Map<StepId, T> with(Map<StepId, T> map, StepId step, T value) {
    Map<StepId, T> more = new HashMap<>(map);
    more.put(step, value);
    return Map.copyOf(more);
  }

  /** What was worked at after all is not passed any more. */
  private static <T> Map<StepId, T> without(Map<StepId, T> map, StepId step) {
    Map<StepId, T> left = new HashMap<>(map);
    left.remove(step);
    return Map.copyOf(left);
  }

  /** Whether a step was done after that one was done last. */
  public boolean doneSince(StepId step, StepId other) {
    List<StepId> order = List.copyOf(stepsDone);
    return order.indexOf(step) > order.indexOf(other);
  }

  private static Set<StepId> plus(Set<StepId> set, StepId item) {
    Set<StepId> more = new LinkedHashSet<>(set);
    more.remove(item);
    more.add(item);
    return Collections.unmodifiableSet(more);
  }
}
