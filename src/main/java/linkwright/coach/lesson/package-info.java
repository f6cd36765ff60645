/**
 * The place of the lesson: a student answers before she is told. What is asked and answered stands
 * in her own book and nowhere else. Start from {@link linkwright.coach.lesson.LessonPlace}. Nothing
 * is null.
 */
package linkwright.coach.lesson;
