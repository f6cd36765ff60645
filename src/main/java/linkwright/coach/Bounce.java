package linkwright.coach;

import java.time.Instant;
import java.util.Optional;

/**
 * A press counts at once, but a key that bounces or is held counts once. Held for a second, the
 * piece just counted is offered as redo.
 */
final class Bounce {
  private static final String TOO_SOON =
      "That press came too soon after the last one: it counts nothing.";

  private Bounce() {}

  /** What follows from a key pressed at that moment of the steady clock. */
  static Turn key(Model model, Key key, Instant at) {
    Optional<Act> meant = Update.act(model, key);
    boolean typedNumber = model.screen() instanceof Screen.Bench bench && !bench.digits().isEmpty();
    Presses presses = model.presses();
    if (meant.isEmpty()) {
      return Update.key(model.with(Presses.NONE), key);
    }
    if (typedNumber || !presses.tooSoon(key, meant.get(), at)) {
      return Update.key(model.with(presses.counted(key, meant.get(), at)), key);
    }
    Model still = model.with(presses.passedOver(at));
    return still.presses().held() ? HeldKey.held(still) : Turn.to(still.told(TOO_SOON));
  }
}
