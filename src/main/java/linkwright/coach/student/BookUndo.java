package linkwright.coach.student;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.job.Strikes;
import linkwright.lesson.Learner;

/**
 * Takes back what was signed, studied or set last in a lesson book, on the day on which it was
 * entered: by an entry that strikes it, for nothing is erased.
 */
final class BookUndo {
  private BookUndo() {}

  /** The last of it that stands and is of today, taken back by whoever entered it. */
  static Turn last(Model model, String title) {
    Optional<Learner> learner = model.learning().student();
    Optional<Learner.Entered> last =
        learner
            .flatMap(Learner::enteredLast)
            .filter(entered -> entered.day().equals(model.today()));
    if (last.isEmpty()) {
      return Turn.to(
          model.told("Nothing is taken back: no mark, study or practice of today stands here."));
    }
    String id = learner.orElseThrow().id();
    LessonFact fact = last.get().fact();
    String by = fact instanceof LessonFact.Signed mark ? mark.teacher() : id;
    Fact strike = new Fact.Struck(last.get().entry(), Strikes.UNDONE);
    return Turn.with(
        model.told("Taken back in " + title + ": " + words(fact) + "."),
        new Effect.KeepOfStudent(id, by, List.of(strike)));
  }

  private static String words(LessonFact fact) {
    if (fact instanceof LessonFact.Signed mark) {
      return "the mark of " + mark.teacher();
    }
    return fact instanceof LessonFact.PieceStudied study
        ? "the study of " + study.piece()
        : "the practice that was set";
  }
}
