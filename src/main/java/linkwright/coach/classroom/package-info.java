/**
 * The place of the class: all students' books of a folder at a glance, to look at only. Start from
 * {@link linkwright.coach.classroom.ClassPlace}. Nothing is null.
 */
package linkwright.coach.classroom;
