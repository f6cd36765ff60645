package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.safety.OtherJobs;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.TimerRun;

/**
 * A wait that is over rings wherever she is; the next press of the common key goes there and does
 * nothing else.
 */
final class DueWaits {
  private DueWaits() {}

  /** The wait to which the common key goes from here; empty where she is there, or none is over. */
  static Optional<JobWait> next(Model model) {
    boolean busy =
        model.held().form().isPresent()
            || Places.of(model).takesEveryKey()
            || model.held() instanceof HotWorkHeld
            || !(model.writing() instanceof Writing.Nothing);
    if (busy || model.due().isEmpty()) {
      return Optional.empty();
    }
    return model.due().stream().filter(wait -> leads(model, wait)).findFirst();
  }

  private static boolean leads(Model model, JobWait wait) {
    if (wait.elsewhere()) {
      return !wait.held();
    }
    boolean looks = model.job().map(OpenJob::lookOnly).orElse(true);
    boolean there = model.held().place() == PlaceId.TIMERS;
    if (looks || there || wait.run().step().isEmpty()) {
      return false;
    }
    return model.held().place() == PlaceId.BENCH
        ? !BenchAnswers.away(model)
            && !AskedOnce.acts(Places.of(model), model).contains(Act.TO_DUE)
            && BenchAnswers.due(model).isPresent()
        : true;
  }

  /** Whether that key goes there. */
  static boolean goes(Model model, Key key) {
    return model.settings().keys().find(key, List.of(Act.TO_DUE)).isPresent()
        && next(model).isPresent();
  }

  static Turn go(Model model) {
    JobWait wait = next(model).orElseThrow();
    if (wait.elsewhere()) {
      Model told =
          called(model, wait)
              .toward(Optional.of(wait.slug()))
              .told("Over: " + wait.named() + "." + BenchAnswers.typed(model));
      return Turn.with(told, new Effect.OpenBook(wait.slug()));
    }
    return model.held().place() == PlaceId.BENCH
        ? BenchAnswers.toDue(model)
        : Turn.goTo(called(model, wait).toward(Optional.of(wait.slug())), PlaceId.BENCH);
  }

  private static Model called(Model model, JobWait wait) {
    return wait.run().step().map(step -> model.calledTo(wait.slug(), step)).orElse(model);
  }

  /** Where the wait of a job that was opened for it is answered. */
  static PlaceId placeOf(Model model, OpenJob job) {
    List<TimerRun> ringing = job.state().timers().ringing(model.steady());
    // Whoever comes back from a wait finds none.
    return ringing.isEmpty() || ringing.stream().anyMatch(timer -> timer.step().isPresent())
        ? PlaceId.BENCH
        : PlaceId.TIMERS;
  }

  /** What rings, told once as it begins to. */
  static String told(Model model) {
    return next(model)
        .filter(wait -> wait.elsewhere() || model.held().place() != PlaceId.BENCH)
        .or(() -> model.due().stream().filter(JobWait::held).findFirst())
        .map(wait -> OtherJobs.told(model, wait).over("{do:to-due} goes there."))
        .orElse("");
  }
}
