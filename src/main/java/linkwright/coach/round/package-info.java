/**
 * The place that shows the way round a job: how it stands everywhere, with the key that leads
 * there. Start from {@link linkwright.coach.round.RoundPlace}. Nothing is null.
 */
package linkwright.coach.round;
