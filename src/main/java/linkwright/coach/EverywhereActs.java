package linkwright.coach;

import java.util.List;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Ringing;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.coach.student.StudentPlace;

/** What can be done at every place. */
final class EverywhereActs {
  static final List<Act> ALL =
      List.of(
          Act.ROUND,
          Act.HELP,
          Act.FIND,
          Act.TO_LOOKUP,
          Act.UNDO,
          Act.BRING_BACK,
          Act.ANSWER,
          Act.TO_HOT_WORK,
          Act.TO_PERSONS,
          Act.ACROSS,
          Act.COPY,
          Act.TO_SETTINGS,
          Act.LEAVE);

  private EverywhereActs() {}

  static Turn act(Model model, Act act) {
    if (model.held() instanceof HotWorkHeld && act != Act.HELP) {
      return act == Act.UNDO || act == Act.BRING_BACK ? asked(model) : first(model);
    }
    if (model.held().place() == PlaceId.STUDENT && (act == Act.UNDO || act == Act.BRING_BACK)) {
      return Places.of(model).act(model, act);
    }
    return switch (act) {
      case ROUND -> Turn.goTo(model, back(model));
      case HELP -> Turn.goTo(model, PlaceId.HELP);
      case FIND -> Turn.goTo(model, PlaceId.FIND);
      case TO_SETTINGS -> Turn.goTo(model, PlaceId.SETTINGS);
      case ACROSS -> across(model);
      case COPY -> Turn.with(model, new Effect.Copy());
      case LEAVE ->
          model.job().isPresent()
              ? Turn.with(model, new Effect.ShutBook(), new Effect.Leave())
              : Turn.with(model, new Effect.Leave());
      case TO_LOOKUP -> Turn.goTo(typedTold(model), PlaceId.LOOKUP);
      case UNDO -> reaches(model) ? Undo.last(model) : asked(model);
      case BRING_BACK -> reaches(model) ? Undo.bringBack(model) : asked(model);
      case TO_PERSONS -> Turn.goTo(typedTold(model), PlaceId.PERSONS);
      case TO_HOT_WORK -> Turn.goTo(model, PlaceId.HOT_WORK);
      case ANSWER -> Ringing.answer(model);
      default -> Turn.to(model);
    };
  }

  private static PlaceId back(Model model) {
    if (StudentPlace.isOfClass(model)) {
      return PlaceId.CLASS_ROOM;
    }
    return model.job().isPresent() ? PlaceId.ROUND : PlaceId.TRAY;
  }

  /** A number that was typed at the bench is gone from there; that is told. */
  private static Model typedTold(Model model) {
    String typed = BenchAnswers.typed(model).strip();
    return typed.isEmpty() ? model : model.told(typed);
  }

  /** One number on all of the screen, or everything again. */
  private static Turn across(Model model) {
    boolean wanted = !model.settings().across();
    Model next = model.with(model.settings().across(wanted));
    if (!wanted) {
      return Turn.to(next.told("Everything is shown again."));
    }
    return Turn.to(
        AcrossRoom.shown(next)
            ? next
            : model.told("No count stands here that could fill the screen: it stays as it is."));
  }

  private static boolean reaches(Model model) {
    return model.job().map(OpenJob::lookOnly).orElse(true) || Places.of(model).undoes(model);
  }

  /** What was chosen instead of an answer is told as what it is, not as an undo. */
  private static Turn first(Model model) {
    return Turn.to(model.told("First the question of the flames."));
  }

  private static Turn asked(Model model) {
    return Turn.to(model.told(NotNow.notUndone(model)));
  }
}
