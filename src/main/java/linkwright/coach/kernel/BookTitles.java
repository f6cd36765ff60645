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
 */
public record BookTitles(Handbook handbook, String routine) {
  /** Those of the job on the bench. */
  public static BookTitles of(Model model) {
    return new BookTitles(
        model.handbook(), model.job().map(job -> job.state().course().routine()).orElse(""));
  }

  String step(StepId id) {
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
    return handbook.routine(id).map(of -> of.title()).orElseGet(() -> EntryKind.spoken(id.replace('.', '-')));
  }
}
