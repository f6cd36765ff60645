/**
 * The place that offers the chains near the one wished that can be had, each by one key. Start from
 * {@link linkwright.coach.nearest.NearestPlace}. Lengths are mm. Nothing is null.
 */
package linkwright.coach.nearest;
