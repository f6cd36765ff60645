/**
 * The place of the timers: set, answered, stopped, several at once. Start from {@link
 * linkwright.coach.timers.TimersPlace}. Times are s. Nothing is null.
 */
package linkwright.coach.timers;
