package linkwright.coach;

import java.time.Instant;
import java.util.Optional;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Notice;
import linkwright.coach.kernel.Presses;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/**
 * A press counts at once, but a key that bounces or is held counts once. Held for a second, the
 * piece just counted is offered as redo.
 */
final class Bounce {
  private static final String TOO_SOON =
      "That press came too soon after the last one: it counts nothing.";

  /** Behind what the press before it told. */
  private static final String AGAIN_TOO_SOON = " Pressed again too soon: that counts nothing.";

  private Bounce() {}

  /** What follows from a key of which nobody knows when it was pressed: it is no bounce. */
  static Turn untimed(Model model, Key key) {
    Model quiet = Turning.quieted(model, key, Coach.meant(model, key));
    Turn turn = Coach.key(quiet.with(Presses.NONE), key);
    return Coach.meant(model, key).isPresent() ? turn : HotWorkGate.stands(model, turn);
  }

  /** The same, with since when the screen stands that the last press led to. */
  static Model drawn(Model model, Optional<Instant> since) {
    return since.map(model.presses()::drawn).map(model::with).orElse(model);
  }

  /** What follows from a key pressed at that moment of the steady clock. */
  static Turn key(Model before, Key key, Instant at) {
    Optional<Act> meant = Coach.meant(before, key);
    Model model = Turning.quieted(before, key, meant);
    boolean typedNumber = Places.of(model).countIsTyped(model);
    Presses presses = model.presses();
    if (keeps(model, key)) {
      // What a form asks as it is kept is answered by keeping it again: by whoever read it.
      return presses.act().equals(Optional.of(Act.KEEP)) && presses.unread(key, at)
          ? Turn.to(tooSoon(before, at))
          : Coach.key(model.with(presses.counted(key, Act.KEEP, at)), key);
    }
    if (meant.isEmpty()) {
      boolean typed = model.held().form().isPresent() || Places.of(model).takesEveryKey();
      return !typed && presses.unread(key, at)
          ? Turn.to(tooSoon(before, at))
          : HotWorkGate.stands(before, Coach.key(model.with(Presses.NONE), key));
    }
    if (HotWorkGate.pressedUnread(model, meant.get(), at)) {
      return Turn.to(model.with(presses.refused(key, meant.get(), at)).told(HotWorkGate.UNREAD));
    }
    boolean unread = BenchAnswers.asksSure(model) && presses.unread(key, at);
    if (!unread && (typedNumber || !presses.tooSoon(key, meant.get(), at))) {
      return Coach.key(model.with(presses.counted(key, meant.get(), at)), key);
    }
    Model still = model.with(presses.passedOver(at));
    return still.presses().held() ? Places.of(still).keyHeld(still) : Turn.to(tooSoon(before, at));
  }

  /** What the press before it told stands: nobody has read it yet. */
  private static Model tooSoon(Model before, Instant at) {
    Model still = before.with(before.presses().passedOver(at));
    Notice stands = before.notice();
    if (stands.text().isEmpty() || stands.text().equals(TOO_SOON)) {
      return still.told(TOO_SOON);
    }
    return stands.text().endsWith(AGAIN_TOO_SOON)
        ? still
        : still.with(new Notice(stands.text() + AGAIN_TOO_SOON, stands.trouble()));
  }

  private static boolean keeps(Model model, Key key) {
    return model
        .held()
        .form()
        .filter(form -> form.key(key) instanceof Form.KeyOutcome.Confirmed)
        .isPresent();
  }
}
