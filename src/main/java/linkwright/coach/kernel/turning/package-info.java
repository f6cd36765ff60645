/**
 * What a place says and what is open there, and turning on to what has no room at once. Start from
 * {@link linkwright.coach.kernel.turning.AskedOnce}. Nothing is null.
 */
package linkwright.coach.kernel.turning;
