package linkwright.coach.kernel;

import java.util.Map;
import linkwright.job.HotWork;
import linkwright.job.JobState;
import linkwright.job.Sittings;
import linkwright.job.Timers;
import linkwright.routine.Hazard;
import linkwright.routine.Step;
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
 */
public record BenchBook(
    String slug,
    String job,
    boolean closed,
    Timers timers,
    HotWork.OfBook flames,
    Map<String, Sittings.Sat> sittings) {
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
            state.flames().lastHeat(step -> burnsGas(handbook, routine, step)),
            state.flames().ended()),
        state.sittings().last());
  }

  private static boolean burnsGas(Handbook handbook, String routine, String step) {
    return handbook
        .routine(routine)
        .flatMap(found -> found.step(step))
        .map(Step::does)
        .filter(does -> does.contains(Hazard.BURNS_GAS))
        .isPresent();
  }

  BenchBook with(Timers others) {
    return new BenchBook(slug, job, closed, others, flames, sittings);
  }
}
