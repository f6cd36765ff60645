/**
 * Teaching: what a student can be asked of a routine, which question comes next, and what a
 * student's own book tells of her. Start from {@link linkwright.lesson.QuestionBank} and {@link
 * linkwright.lesson.Lesson}; what she has shown is {@link linkwright.lesson.Learner}. Lengths are
 * mm; nothing is null. Chance comes as a seed that stands in her book.
 */
package linkwright.lesson;
