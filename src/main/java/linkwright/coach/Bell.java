package linkwright.coach;

import java.time.Duration;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;

/** Rings while a wait is due, from time to time. */
final class Bell {
  /** While a timer rings, the bell is rung anew after so long. */
  static final Duration EVERY = Duration.ofSeconds(10);

  private Bell() {}

  static Turn tick(Model model) {
    if (model.due().isEmpty()) {
      return Turn.to(model.rangAtNothing());
    }
    long second = model.steady().getEpochSecond();
    if (second - model.rungAt() < EVERY.toSeconds()) {
      return Turn.to(model);
    }
    // When one comes due, what was told before it, such as that it runs, holds no more.
    Model heard = model.rungAt() == 0 ? model.quiet().told(DueWaits.told(model)) : model;
    return Turn.with(heard.rung(second), new Effect.RingBell());
  }
}
