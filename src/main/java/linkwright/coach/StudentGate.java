package linkwright.coach;

import linkwright.coach.bench.Bench;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.saying.Sayings;

/** At the bench a student says what comes before the step is shown. */
final class StudentGate {
  private StudentGate() {}

  /** The turn; in front of a step that she has not named yet, where she is asked. */
  static Turn after(Turn turn) {
    Model model = turn.model();
    boolean atBench =
        turn.next().isEmpty()
            && model.writing() instanceof Writing.Nothing
            && model.held().place() == PlaceId.BENCH
            && model.job().map(OpenJob::lookOnly).map(look -> !look).orElse(false)
            && !Bench.away(model);
    if (!atBench) {
      return turn;
    }
    if (isUnread(model)) {
      return turn.and(new Effect.OpenStudent(model.job().map(OpenJob::person).orElse(""), ""));
    }
    Model ready =
        model.learning().student().filter(her -> her.id().equals(model.job().map(OpenJob::person).orElse(""))).isPresent()
            ? Banks.ready(model, model.job().orElseThrow().state().course().routine())
            : model;
    if (!Sayings.asks(ready)) {
      return new Turn(ready, turn.effects(), turn.next());
    }
    Turn asked = Coach.arrived(ready, Places.of(PlaceId.SAYING).enter(ready));
    return asked.model().held().place() == PlaceId.BENCH
        ? turn
        : new Turn(asked.model(), turn.and(asked.effects()).effects(), asked.next());
  }

  /** A student sits here whose book was not read yet; a class has her in its roster. */
  private static boolean isUnread(Model model) {
    return model.learning().roster().names().containsKey(model.job().map(OpenJob::person).orElse(""))
        && model
            .learning()
            .student()
            .filter(learner -> learner.id().equals(model.job().map(OpenJob::person).orElse("")))
            .isEmpty();
  }
}
