/**
 * The place that shows where every piece of a job is: each pile by its stage, where it lies, and
 * the step where it is taken up again. Start from {@link linkwright.coach.piles.PilesPlace}.
 * Nothing is null.
 */
package linkwright.coach.piles;
