package linkwright.coach.kernel;

import linkwright.job.TimerRun;

/**
 * A wait at this bench, of whatever job.
 *
 * @param slug the book of its job
 * @param job the job's name; empty for the one at hand and for what is the bench's
 * @param run the wait itself
 * @param held whether another window writes its job: there alone it can be answered
 */
public record JobWait(String slug, String job, TimerRun run, boolean held) {
  /** The wait and whose it is, as it is told. */
  public String named() {
    return job.isEmpty() ? run.named() : run.named() + " (" + job + ")";
  }

  /** That it is over, and where it is answered; the key that leads there is the output's. */
  public String over(String leads) {
    return "Over: "
        + named()
        + (held ? ". Another window has that job open: it is quieted there." : ". " + leads);
  }

  /** Whether it is the fire watch, which is no job's. */
  public boolean isWatch() {
    return slug.isEmpty();
  }

  /** Whether it belongs to another job than the one at hand. */
  public boolean elsewhere() {
    return !job.isEmpty();
  }
}
