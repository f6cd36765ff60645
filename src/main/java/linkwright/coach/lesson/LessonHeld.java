package linkwright.coach.lesson;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * A lesson: who and what; the rest stands in the student's book.
 *
 * @param student whose book it is; empty while she is chosen
 * @param routine what it is about; empty while it is chosen
 * @param at the line that is looked at in a list
 * @param told whether the last answer is being told
 * @param form the form of a new student
 * @param turned how often the reader turned on
 */
record LessonHeld(
    String student, String routine, int at, boolean told, Optional<Form> form, int turned)
    implements Held {
  static LessonHeld of(String student, String routine) {
    return new LessonHeld(student, routine, 0, false, Optional.empty(), 0);
  }

  LessonHeld at(int line) {
    return new LessonHeld(student, routine, line, told, Optional.empty(), 0);
  }

  LessonHeld telling(boolean answer) {
    return new LessonHeld(student, routine, at, answer, Optional.empty(), 0);
  }

  LessonHeld with(Form open) {
    return new LessonHeld(student, routine, at, told, Optional.of(open), 0);
  }

  LessonHeld turned(int times) {
    return new LessonHeld(student, routine, at, told, form, times);
  }

  @Override
  public PlaceId place() {
    return PlaceId.LESSON;
  }
}
