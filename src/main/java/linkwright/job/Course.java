package linkwright.job;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * How far a job has come through its routine.
 *
 * @param name the job's name
 * @param routine the routine's id
 * @param wish the plan file's keys with what was typed for each
 * @param step the step that is open, empty if none was opened yet
 * @param stepsDone steps without a count that were done
 * @param waitsBegun names of the timers set since the step was opened
 * @param cautionsSeen cautions seen whole in this sitting; a new sitting shows them again
 * @param closed whether the job is closed
 * @param nextTime what to do differently next time
 */
public record Course(
    String name,
    String routine,
    Map<String, String> wish,
    String step,
    Set<String> stepsDone,
    Set<String> waitsBegun,
    Set<String> cautionsSeen,
    boolean closed,
    String nextTime) {
  static final Course BLANK =
      new Course("", "", Map.of(), "", Set.of(), Set.of(), Set.of(), false, "");

  Course after(Fact fact) {
    if (fact instanceof Fact.JobOpened opened) {
      return new Course(
          opened.name(),
          opened.routine(),
          wish,
          step,
          stepsDone,
          waitsBegun,
          cautionsSeen,
          false,
          nextTime);
    }
    if (fact instanceof Fact.PlanSet plan) {
      return with(plan.wish(), step, stepsDone, waitsBegun, cautionsSeen);
    }
    if (fact instanceof Fact.StepOpened opened) {
      return with(wish, opened.step(), stepsDone, Set.of(), cautionsSeen);
    }
    if (fact instanceof Fact.StepDone done) {
      return with(wish, step, plus(stepsDone, done.step()), waitsBegun, cautionsSeen);
    }
    if (fact instanceof Fact.TimerStarted timer) {
      return with(wish, step, stepsDone, plus(waitsBegun, timer.name()), cautionsSeen);
    }
    if (fact instanceof Fact.CautionSeen seen) {
      return with(wish, step, stepsDone, waitsBegun, plus(cautionsSeen, seen.caution()));
    }
    if (fact instanceof Fact.SittingStarted || fact instanceof Fact.SteppedAway) {
      return with(wish, step, stepsDone, waitsBegun, Set.of());
    }
    if (fact instanceof Fact.JobClosed done) {
      return closed(true, done.nextTime());
    }
    return fact instanceof Fact.JobReopened ? closed(false, nextTime) : this;
  }

  private Course closed(boolean nowClosed, String learnt) {
    return new Course(
        name, routine, wish, step, stepsDone, waitsBegun, cautionsSeen, nowClosed, learnt);
  }

  private Course with(
      Map<String, String> newWish,
      String newStep,
      Set<String> newDone,
      Set<String> newWaits,
      Set<String> newSeen) {
    return new Course(
        name, routine, newWish, newStep, newDone, newWaits, newSeen, closed, nextTime);
  }

  private static Set<String> plus(Set<String> set, String item) {
    Set<String> more = new HashSet<>(set);
    more.add(item);
    return Set.copyOf(more);
  }
}
