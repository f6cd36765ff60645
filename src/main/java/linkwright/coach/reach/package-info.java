/**
 * The place that tells the longest chain, or the heaviest wire, that can be had from what there is.
 * Start from {@link linkwright.coach.reach.ReachPlace}. Nothing is null.
 */
package linkwright.coach.reach;
