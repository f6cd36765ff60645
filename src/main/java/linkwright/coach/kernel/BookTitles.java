package linkwright.coach.kernel;

import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.Handbook;

/**
 * What steps, cautions and routines that a book names are called; where the files are gone or
 * changed since, their ids as words.
 *
 * @param handbook what is known now
 * @param routine the routine that the book goes by; empty if by none
 * @param learning what students are called, and the step that one has still to name
 */
public record BookTitles(Handbook handbook, String routine, StudentsAtHand learning) {
  /** Those of the job on the bench. */
  public static BookTitles of(Model model) {
    return new BookTitles(
        model.handbook(),
        model.job().map(job -> job.state().course().routine()).orElse(""),
        model.learning());
  }

  /** What a person is called here: the book knows a student by her id. */
  String person(String id) {
    return learning.roster().name(id);
  }

  String step(StepId id) {
    if (learning.hides(id)) {
      return "the one to be said first";
    }
    return handbook
        .routine(routine)
        .flatMap(of -> of.steps().stream().filter(step -> step.id().equals(id)).findFirst())
        .map(Step::title)
        .orElseGet(() -> EntryKind.spoken(id.word()));
  }

  String caution(String id) {
    return handbook
        .caution(id)
        .map(caution -> caution.title())
        .orElseGet(() -> EntryKind.spoken(id));
  }

  String routine(String id) {
    return handbook
        .routine(id)
        .map(of -> of.title())
        .orElseGet(() -> EntryKind.spoken(id.replace('.', '-')));
  }
}
