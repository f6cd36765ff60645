package linkwright.coach.kernel;

import linkwright.job.TimerRun;

/**
 * A wait at this bench, of whatever job.
 *
 * @param slug the book of its job
 * @param job the job's name; empty for the one at hand and for what is the bench's
 * @param run the wait itself
 */
public record JobWait(String slug, String job, TimerRun run) {
  /** The wait and whose it is, as it is told. */
  public String named() {
    return job.isEmpty() ? run.named() : run.named() + " (" + job + ")";
  }

  /** Whether it belongs to another job than the one at hand. */
  public boolean elsewhere() {
    return !job.isEmpty();
  }
}
