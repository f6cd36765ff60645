package linkwright.coach.kernel.safety;

import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.job.FlameWord;

/** What another job is called: where a customer may look on it has no name, for it may be one. */
public final class OtherJobs {
  private static final String UNNAMED = "another job";

  private OtherJobs() {}

  /** A wait as it is told where she is. */
  public static JobWait told(Model model, JobWait wait) {
    return wait.elsewhere()
        ? new JobWait(wait.slug(), called(model, wait.job()), wait.run(), wait.held())
        : wait;
  }

  /** The name of the job of a word on hot work, as it is told where she is. */
  static String called(Model model, FlameWord word) {
    boolean own = model.job().filter(job -> job.slug().equals(word.book())).isPresent();
    return own ? word.job() : called(model, word.job());
  }

  private static String called(Model model, String job) {
    return model.held().place().isLookedAt() ? UNNAMED : job;
  }
}
