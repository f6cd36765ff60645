/**
 * The place in front of the bench where a student says what comes, before the step is shown. Start
 * from {@link linkwright.coach.saying.SayingPlace}. Nothing is null.
 */
package linkwright.coach.saying;
