/**
 * The place where a job is made again: what carries over from the earlier one, and the little that
 * may differ. Start from {@link linkwright.coach.again.AgainPlace}. Lengths are mm, masses g,
 * nothing is null.
 */
package linkwright.coach.again;
