package linkwright.coach;

import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.asking.Banks;
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
            && !BenchAnswers.away(model);
    if (!atBench) {
      return turn;
    }
    if (isUnread(model)) {
      return turn.and(new Effect.OpenStudent(person(model), ""));
    }
    Model ready =
        isAtHand(model)
            ? Banks.ready(model, model.job().orElseThrow().state().course().routine())
            : model;
    if (!Sayings.asks(ready)) {
      return new Turn(ready, turn.effects(), turn.next());
    }
    Turn asked = Coach.arrived(ready, Places.of(PlaceId.SAYING).enter(ready));
    return new Turn(asked.model(), turn.and(asked.effects()).effects(), asked.next());
  }

  /** A student sits here whose book was not read yet; a class has her in its roster. */
  private static boolean isUnread(Model model) {
    return model.learning().roster().names().containsKey(person(model)) && !isAtHand(model);
  }

  private static boolean isAtHand(Model model) {
    return model
        .learning()
        .student()
        .filter(learner -> learner.id().equals(person(model)))
        .isPresent();
  }

  private static String person(Model model) {
    return model.job().map(OpenJob::person).orElse("");
  }
}
