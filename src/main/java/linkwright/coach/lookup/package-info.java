/**
 * The place where metals, solders, clasps, patterns and words of the trade are looked up. Start
 * from {@link linkwright.coach.lookup.LookUpPlace}. Nothing is null.
 */
package linkwright.coach.lookup;
