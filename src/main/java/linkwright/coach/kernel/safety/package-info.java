/**
 * What several places say of safety: which cautions are met, a card whole, hot work and its watch.
 * Start from {@link linkwright.coach.kernel.safety.Cards}. Nothing is null.
 */
package linkwright.coach.kernel.safety;
