package linkwright.coach;

import java.util.EnumSet;
import java.util.Set;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.saying.Sayings;

/**
 * At the bench a student says what comes before the step is shown; until then no place of the job
 * names it.
 */
final class StudentGate {
  /** Where a step would be named. */
  private static final Set<PlaceId> NAMES =
      EnumSet.of(PlaceId.BENCH, PlaceId.ROUND, PlaceId.PILES, PlaceId.BOOK, PlaceId.REHEARSAL);

  private StudentGate() {}

  /** The turn; in front of a step that she has not named yet, where she is asked. */
  static Turn after(Turn turn) {
    Model model = turn.model();
    boolean settled = turn.next().isEmpty() && model.writing() instanceof Writing.Nothing;
    boolean atWork = model.job().filter(job -> !job.lookOnly()).isPresent();
    if (!settled || !atWork || !NAMES.contains(model.held().place())) {
      return turn;
    }
    if (isUnread(model)) {
      return turn.and(new Effect.OpenStudent(person(model), ""));
    }
    Model ready =
        isAtHand(model)
            ? Banks.ready(model, model.job().orElseThrow().state().course().routine())
            : model;
    Model hidden = ready.with(ready.learning().unsaid(Sayings.unsaid(ready)));
    boolean asks =
        hidden.held().place() == PlaceId.BENCH
            && !BenchAnswers.away(hidden)
            && Sayings.asks(hidden);
    if (!asks) {
      return new Turn(hidden, turn.effects(), turn.next());
    }
    Turn asked = Coach.arrived(hidden, Places.of(PlaceId.SAYING).enter(hidden));
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
