/**
 * The place where one sum is chosen, its form filled, and what it comes to shown while typing.
 * Start from {@link linkwright.coach.reckoner.ReckonPlace}. Nothing is null.
 */
package linkwright.coach.reckoner;
