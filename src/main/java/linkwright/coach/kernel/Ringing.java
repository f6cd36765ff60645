package linkwright.coach.kernel;

import java.util.Optional;
import linkwright.job.Fact;
import linkwright.job.TimerRun;

/** A timer that is due and waits for an answer. */
public final class Ringing {
  private Ringing() {}

  /** Answers the timer that has been due for longest. */
  public static Turn answer(Model model) {
    Optional<TimerRun> ringing = model.timers().ringing(model.steady()).stream().findFirst();
    return ringing
        .map(
            timer ->
                Turn.keep(
                    model.told(timer.named() + ": quiet."), new Fact.TimerAnswered(timer.id())))
        .orElseGet(() -> Turn.to(model.told("No timer rings.")));
  }
}
