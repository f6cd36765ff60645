/**
 * The place of a student: what she knows, what she made, what comes next, and the teacher's mark.
 * All of it is reckoned from her own book. Start from {@link
 * linkwright.coach.student.StudentPlace}. Nothing is null.
 */
package linkwright.coach.student;
