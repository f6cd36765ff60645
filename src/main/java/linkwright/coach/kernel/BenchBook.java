package linkwright.coach.kernel;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import linkwright.job.HotWork;
import linkwright.job.JobState;
import linkwright.job.Sittings;
import linkwright.job.Timers;
import linkwright.routine.Hazard;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;
import linkwright.standing.Handbook;

/**
 * What one job's book gives to its bench, whatever job is at hand.
 *
 * @param slug the book's name
 * @param job the job's name
 * @param closed whether it is closed
 * @param timers its timers
 * @param flames what it tells of hot work
 * @param sittings device → whose sitting it was last there
 * @param seenAt the last entry of a sitting that was not ended; empty where none is
 * @param heldElsewhere whether another window writes it now
 */
public record BenchBook(
    String slug,
    String job,
    boolean closed,
    Timers timers,
    HotWork.OfBook flames,
    Map<String, Sittings.Sat> sittings,
    Optional<Instant> seenAt,
    boolean heldElsewhere) {
  /** What a job's state gives. */
  public static BenchBook of(String slug, JobState state, Handbook handbook) {
    String job = state.course().name().isEmpty() ? slug : state.course().name();
    String routine = state.course().routine();
    return new BenchBook(
        slug,
        job,
        state.course().closed(),
        state.timers(),
        new HotWork.OfBook(
            slug,
            state.flames().words(slug, job),
            state
                .flames()
                .lastHeat(
                    step -> is(handbook, routine, step, BenchBook::burnsGas),
                    step -> is(handbook, routine, step, BenchBook::countsEach)),
            state.flames().ended()),
        state.sittings().last(),
        state.times().seenAt(),
        false);
  }

  private static boolean is(Handbook handbook, String routine, StepId step, Predicate<Step> what) {
    return handbook.routine(routine).flatMap(found -> found.step(step)).filter(what).isPresent();
  }

  private static boolean burnsGas(Step step) {
    return step.does().contains(Hazard.BURNS_GAS);
  }

  private static boolean countsEach(Step step) {
    return step.counts() == StepCounting.EACH;
  }

  /** Its timers while it is open; a closed job has none. */
  Timers waiting() {
    return closed ? Timers.NONE : timers;
  }

  BenchBook with(Timers others) {
    return new BenchBook(slug, job, closed, others, flames, sittings, seenAt, heldElsewhere);
  }

  /** The same, as it is written by another window now, or is not. */
  public BenchBook held(boolean elsewhere) {
    return new BenchBook(slug, job, closed, timers, flames, sittings, seenAt, elsewhere);
  }
}
