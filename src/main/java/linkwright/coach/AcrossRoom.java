package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.TimerRun;

/**
 * What is shown across the room: the wait that is due or the place's one number, its word, and the
 * key of the common act. A form, a caution and a question come first and are shown whole.
 */
final class AcrossRoom {
  private AcrossRoom() {}

  static Optional<Page.Across> of(Model model, Place place, List<Act> acts, Content body) {
    boolean other =
        !model.settings().across()
            || model.held().form().isPresent()
            || place.takesEveryKey()
            || Beside.flat(body.parts()).anyMatch(AcrossRoom::whole);
    return other
        ? Optional.empty()
        : of(
            model,
            place,
            acts.isEmpty() ? Act.ROUND : acts.get(0),
            Beside.flat(body.parts()).toList());
  }

  /** Whether the one number takes the screen now; a place without one stays whole. */
  static boolean shown(Model model) {
    Place place = Places.of(model);
    return model.settings().across()
        && of(model, place, AskedOnce.acts(place, model), AskedOnce.content(place, model))
            .isPresent();
  }

  /** Whether that key ends it. */
  static boolean ends(Model model, Key key) {
    return key.is(Key.Kind.ESCAPE) && shown(model);
  }

  /** What is never hidden behind a number. */
  private static boolean whole(Part part) {
    return part instanceof Question
        || (part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION_TITLE);
  }

  private static Optional<Page.Across> of(Model model, Place place, Act act, List<Part> parts) {
    String says = place.says(model, act);
    Optional<TimerRun> wait = model.timers().next();
    Optional<TimerRun> due = wait.filter(timer -> timer.rings(model.steady()));
    if (due.isPresent()) {
      return Optional.of(new Page.Across("0:00", due.get().name() + " is due", act, says, true));
    }
    Optional<Figure> figure =
        parts.stream().filter(Figure.class::isInstance).map(Figure.class::cast).findFirst();
    if (figure.isPresent()) {
      return Optional.of(
          new Page.Across(figure.get().number(), figure.get().word(), act, says, false));
    }
    return wait.map(
        timer ->
            new Page.Across(
                Clock.running(timer.left(model.steady()).toSeconds()),
                timer.name(),
                act,
                says,
                false));
  }
}
