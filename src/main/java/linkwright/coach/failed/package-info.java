/**
 * The place that shows what failed in a job: by stage and reason, how often pieces went back or
 * were lost, and the cure. Start from {@link linkwright.coach.failed.FailedPlace}. Nothing is null.
 */
package linkwright.coach.failed;
