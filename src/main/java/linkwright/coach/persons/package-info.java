/**
 * The place where it is said who works: a sitting is one person's, and changing person is one act.
 * Start from {@link linkwright.coach.persons.PersonsPlace}. Nothing is null.
 */
package linkwright.coach.persons;
