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

  /**
   * The last of it that stands and is of today: by whoever is at the bench, whose mark it was.
   * Nobody is asked for a mark here, so nothing is entered in a teacher's name.
   */
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
    Fact fact = last.get().fact();
    Fact strike = new Fact.Struck(last.get().entry(), Strikes.UNDONE);
    return Turn.with(
        model.told("Taken back in " + title + ": " + words(fact) + "."),
        new Effect.KeepOfStudent(id, model.person(), List.of(strike)));
  }

  /** Brings back what was taken back last, if that was today and nothing was entered since. */
  static Turn bringBack(Model model, String title) {
    Optional<Learner> learner = model.learning().student();
    Optional<Learner.Entered> last =
        learner.flatMap(Learner::undoneLast).filter(undone -> undone.day().equals(model.today()));
    if (last.isEmpty()) {
      return Turn.to(model.told("Nothing was undone here."));
    }
    String id = learner.orElseThrow().id();
    Fact back = new Fact.Struck(last.get().entry(), Strikes.BROUGHT_BACK);
    return Turn.with(
        model.told("What was taken back stands again in " + title + "."),
        new Effect.KeepOfStudent(id, model.person(), List.of(back)));
  }

  private static String words(Fact fact) {
    if (fact instanceof LessonFact.Signed mark) {
      return "the mark of " + mark.teacher();
    }
    return fact instanceof LessonFact.PieceStudied study
        ? "the study of " + study.piece()
        : "the practice that was set";
  }
}
