package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/**
 * What could not be written takes the middle of the screen until it is answered: the common key
 * tries the same again and counts nothing new, esc gives it up.
 */
final class FailedWrite {
  /** What can be done then. */
  static final List<Act> ACTS = List.of(Act.TRY_AGAIN, Act.GIVE_UP, Act.LEAVE);

  /** Where it is not known whether an entry was kept, nobody says that it was not. */
  private static final String NOT_KNOWN = "It is not known";

  /** Where the book was changed outside, trying again enters nothing: it reads the book anew. */
  private static final String READS_ANEW = "trying again reads it anew.";

  private FailedWrite() {}

  static Model told(Model model, Writing.Pending pending, String why) {
    boolean known = !why.startsWith(NOT_KNOWN);
    return model.with(
        new Writing.Failed(pending.asked(), pending.held(), pending.notice(), why, known));
  }

  static Turn answered(Model model, Writing.Failed failed, Message message) {
    Optional<Act> act = Optional.empty();
    if (message instanceof Message.KeyPressed pressed) {
      if (pressed.key().equals(Key.ctrl("c"))) {
        return Turn.with(model, new Effect.ShutBook(), HotWorkGate.leave(model));
      }
      act = model.settings().keys().find(pressed.key(), ACTS);
    } else if (message instanceof Message.ActChosen chosen) {
      act = ACTS.contains(chosen.act()) ? Optional.of(chosen.act()) : Optional.empty();
    }
    if (act.isEmpty()) {
      return Turn.to(model);
    }
    if (act.get() == Act.LEAVE) {
      Model given = model.with(new Writing.Nothing());
      return HotWorkGate.act(given, Places.of(given), Act.LEAVE);
    }
    if (act.get() == Act.GIVE_UP && failed.held() instanceof HotWorkHeld held) {
      return HotWorkGate.notSaid(model.with(new Writing.Nothing()), held);
    }
    if (act.get() == Act.GIVE_UP) {
      return Turn.to(model.with(new Writing.Nothing()).trouble("Given up: it was not entered."));
    }
    Writing again = new Writing.Pending(failed.asked(), failed.held(), failed.notice(), List.of());
    return Turn.with(model.with(again), failed.asked());
  }

  /** What was pressed is not entered on top of what another program wrote and nobody here saw. */
  static Optional<Turn> overtaken(Model before, Model readAnew) {
    boolean entering =
        before.writing() instanceof Writing.Pending pending
            && pending.asked() instanceof Effect.KeepFacts;
    return entering
        ? Optional.of(
            Turn.goTo(
                readAnew.trouble(
                    "Another program changed this book: it was read anew. What you entered last is"
                        + " not in it; enter it again if it still holds."),
                PlaceId.ROUND))
        : Optional.empty();
  }

  static Content content(Writing.Failed failed) {
    return Content.of(
        "not written",
        new Prose(
            Prose.Kind.HEAD,
            failed.known() ? "Not written, and not counted" : "Not known whether it is written"),
        Prose.stop(failed.why()),
        Prose.says(
            "Nothing else is counted before this is answered. {do:try-again} "
                + (failed.why().endsWith(READS_ANEW)
                    ? "reads the book anew and leads to the places; what you entered last is then"
                        + " entered again"
                    : "tries the same once more")
                + "; {do:give-up} gives it up, and what was typed stays."
                + " {do:leave} leaves, and it is not entered."));
  }
}
