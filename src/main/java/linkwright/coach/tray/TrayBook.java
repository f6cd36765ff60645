package linkwright.coach.tray;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.TrayJob;
import linkwright.job.CautionsMet;
import linkwright.job.ClockMoves;
import linkwright.job.Timers;

/**
 * Where a job stands by its book, whatever the time is.
 *
 * @param job the job as it lies in the tray, timers left aside
 * @param timers its timers
 * @param met the cautions that were met in it
 */
public record TrayBook(TrayJob job, Timers timers, CautionsMet met) {
  /** The job as it lies in the tray at a time: a timer that is due waits before all else. */
  public TrayJob at(Instant now, ClockMoves moves) {
    if (job.closed()) {
      return job;
    }
    List<String> waits = new ArrayList<>();
    timers
        .steadied(Timers.NONE, moves, now, now)
        .ringing(now)
        .forEach(timer -> waits.add(timer.name() + " is due"));
    waits.addAll(job.waits());
    return new TrayJob(
        job.slug(),
        job.name(),
        job.stands(),
        waits,
        job.lastEntry(),
        job.closed(),
        job.came(),
        job.wants(),
        job.away());
  }
}
